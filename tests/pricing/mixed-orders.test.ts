// Orders of several kinds, line prices, and one total shared over the lines. Figures derived from the rules unless a source is named.

import { describe, expect, it } from 'vitest';
import type { Order } from '../../src/pricing/order.ts';
import { hasPriceRange, orderOf } from '../../src/pricing/order-of-event.ts';
import { priceFigures } from '../../src/pricing/price-figures.ts';
import { priceOrder } from '../../src/pricing/price-order.ts';
import { newEvent } from '../../src/thread/event.ts';
import { decimal } from '../../src/values/decimal.ts';
import { fromStudio } from '../../src/values/known.ts';
import { type Case, priced, terms } from './terms-for-tests.ts';

const each = (amount: string) => ({ amount: decimal(amount), per: 'each' as const });
const prices = (order: Order, given: Case = {}) =>
  priceFigures(priced(order, given)).lines.map((line) => `${line.each.price} ${line.all.price}`);

it('prices "8 buttonholes at 18, 2 wrist corsages at 42, a crown at 140, inc" with one total', () => {
  const figures = priceFigures(
    priced(
      {
        lines: [
          { piece: 'buttonhole', count: 8, price: each('18') },
          { piece: 'wrist corsage', count: 2, price: each('42') },
          { piece: 'flower crown', count: 1, price: each('140'), wearer: 'flower girl' },
        ],
      },
      { rate: '20', currency: 'GBP' },
    ),
  );
  expect(figures.lines.map((line) => [line.each.price, line.all.price])).toEqual([
    ['18.00', '144.00'],
    ['42.00', '84.00'],
    ['140.00', '140.00'],
  ]);
  // 368 / 1.2 / 1.3 / 4
  expect([figures.all.price, figures.all.tax, figures.all.wholesale]).toEqual(['368.00', '61.33', '58.97']);
  expect(figures.lines[2]).toMatchObject({ wearer: 'flower girl', headMaths: { wholesale: '19.60' } });
  expect(figures.headMaths).toBeUndefined();
});

it('prices "9 for 36" as a line', () => {
  expect(prices({ lines: [{ piece: 'buttonhole', count: 9, price: { amount: decimal(36), per: 'line' } }] })).toEqual(['4.00 36.00']);
  expect(prices({ lines: [{ piece: 'buttonhole', count: 7, price: { amount: decimal(36), per: 'line' } }] })).toEqual(['5.14 36.00']);
});

describe('a total for all', () => {
  const lines = [
    { piece: 'buttonhole' as const, count: 8 },
    { piece: 'flower crown' as const, count: 2 },
  ];

  it('is divided by the count within one kind', () => {
    const order = priced({ lines: [{ piece: 'buttonhole', count: 40 }], price: { amount: decimal(1000), per: 'all' } });
    expect([order.lines[0]?.quotedEach.toString(), order.sharedBy]).toEqual(['25', undefined]);
  });

  it('is shared by bench minutes over kinds', () => {
    const minutes = { ...terms(), minutesEach: (piece: string) => (piece === 'buttonhole' ? 15 : 60) };
    const order = priceOrder({ lines, price: { amount: decimal(480), per: 'all' } }, minutes);
    expect(order.ok && [order.value.sharedBy, order.value.lines.map((line) => line.quotedEach.toString())]).toEqual([
      'bench minutes',
      ['30', '120'],
    ]);
  });

  it('is shared by count where the minutes are unknown', () => {
    const order = priced({ lines, price: { amount: decimal(480), per: 'all' } });
    expect([order.sharedBy, order.lines.map((line) => line.quotedEach.toString())]).toEqual(['count', ['48', '48']]);
  });

  it('is shared by list price where every line has one, and says so', () => {
    const listed = [
      { piece: 'buttonhole' as const, count: 8, price: each('18') },
      { piece: 'flower crown' as const, count: 2, price: each('140') },
    ];
    // 144 : 280 of 400
    const order = priced({ lines: listed, price: { amount: decimal(400), per: 'all' } });
    expect([order.sharedBy, order.lines.map((line) => line.all.printed.price.toString())]).toEqual(['list price', ['135.85', '264.15']]);
  });

  it('leaves a line its own price and shares the rest', () => {
    const some = [...lines, { piece: 'wrist corsage' as const, count: 1, price: each('42') }];
    const order = priced({ lines: some, price: { amount: decimal(242), per: 'all' } });
    expect(order.lines.map((line) => line.quotedEach.toString())).toEqual(['20', '20', '42']);
    expect(order.all.printed.price.toString()).toBe('242');
  });

  it('of 100 over three pieces prints 100, not three times 33.33', () => {
    const three = ['buttonhole', 'corsage', 'hair flower'].map((piece) => ({ piece: piece as 'buttonhole', count: 1 }));
    const { all, lines: rows } = priceFigures(priced({ lines: three, price: { amount: decimal(100), per: 'all' } }));
    expect([all.price, rows.map((row) => row.all.price)]).toEqual(['100.00', ['33.34', '33.33', '33.33']]);
  });
});

it('never prints a part below nothing, though every line is worth a penny', () => {
  const pennies = Array.from({ length: 10 }, () => ({ piece: 'buttonhole' as const, count: 1, price: each('0.01') }));
  const { lines, all } = priced({ lines: pennies }, { rate: '50', share: '60', rule: 'out of the price' });
  for (const { printed } of [...lines.map((line) => line.all), all]) {
    expect(Object.values(printed).filter((part) => part.lessThan(0))).toEqual([]);
  }
});

it('shows a line of one piece with one set of figures', () => {
  const { lines } = priced({
    lines: [
      { piece: 'buttonhole', count: 8, price: each('26.33') },
      { piece: 'flower crown', count: 1, price: each('105.33') },
    ],
  });
  expect(lines[1]?.each.printed).toEqual(lines[1]?.all.printed);
});

it('notes a price under the minimum for the kind', () => {
  const own = { ...terms(), minimumPrice: () => fromStudio(decimal('18')) };
  const order = (amount: string) => priceOrder({ lines: [{ piece: 'buttonhole', count: 2, price: each(amount) }] }, own);
  const [low, level] = [order('17.50'), order('18')].map((result) => result.ok && result.value.lines[0]?.belowMinimum?.toString());
  expect([low, level]).toEqual(['18', undefined]);
});

describe('tax on top', () => {
  it('is paid beside the quoted price', () => {
    const { each: one, all } =
      priceFigures(priced({ lines: [{ piece: 'buttonhole', count: 40, price: each('25') }] }, { rate: '20', basis: 'on top' })).lines[0] ??
      {};
    expect([one?.price, one?.tax, one?.exTax]).toEqual(['30.00', '5.00', '25.00']);
    expect([all?.price, all?.tax, all?.exTax]).toEqual(['1200.00', '200.00', '1000.00']);
  });

  it('is not taken off in the head', () => {
    // 25 less 30 %, over 4
    const figures = priceFigures(
      priced({ lines: [{ piece: 'buttonhole', count: 1, price: each('25') }] }, { rate: '20', basis: 'on top' }),
    );
    expect([figures.basis, figures.headMaths]).toEqual(['on top', { wholesale: '4.38' }]);
  });
});

describe('the order of a thread', () => {
  const event = {
    ...newEvent,
    material: 'dried' as const,
    price: { amount: '20', amountMax: '25', per: 'each' as const },
    lines: [
      { piece: 'buttonhole' as const, count: 8, wearer: 'groom' },
      { piece: 'corsage' as const, count: 2, material: 'fresh' as const, price: { amount: '35', amountMax: '40', per: 'line' as const } },
    ],
  };

  it('takes either end of a range', () => {
    const ends = (['least', 'most'] as const).map((end) => orderOf(event, end));
    expect(ends.map((order) => order.price?.amount.toString())).toEqual(['20', '25']);
    expect(ends.map((order) => order.lines[1]?.price?.amount.toString())).toEqual(['35', '40']);
    expect([hasPriceRange(event), hasPriceRange(newEvent)]).toEqual([true, false]);
  });

  it('gives each line its material and wearer', () => {
    expect(orderOf(event).lines.map(({ material, wearer }) => [material, wearer])).toEqual([
      ['dried', 'groom'],
      ['fresh', undefined],
    ]);
  });
});
