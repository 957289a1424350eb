// Everything a person's figures can spoil comes back as a problem with the data for its sentence; nothing throws.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clientFigures } from '../../src/pricing/client-figures.ts';
import { countFor } from '../../src/pricing/count-for.ts';
import { checkLabour } from '../../src/pricing/labour-check.ts';
import type { Order } from '../../src/pricing/order.ts';
import { priceFigures } from '../../src/pricing/price-figures.ts';
import { priceForStems } from '../../src/pricing/price-for.ts';
import { priceLadder } from '../../src/pricing/price-ladder.ts';
import { priceOrder } from '../../src/pricing/price-order.ts';
import { workingOf } from '../../src/pricing/working.ts';
import { decimal } from '../../src/values/decimal.ts';
import { at, type Case, terms } from './terms-for-tests.ts';

const problemOf = (order: Order, given: Case = {}) => {
  const result = priceOrder(order, terms(given));
  return result.ok ? 'priced' : result.problem;
};

describe('amounts', () => {
  it.each([
    ['0', 'price-not-positive', { amount: '0' }],
    ['-5', 'price-not-positive', { amount: '-5' }],
    ['1e30', 'price-too-large', { amount: '1000000000000000000000000000000' }],
    ['0.001', 'price-below-smallest-coin', { amount: '0.001', smallest: '0.01' }],
    ['25.005', 'price-finer-than-coin', { amount: '25.005', smallest: '0.01' }],
    ['NaN', 'price-too-large', { amount: 'NaN' }],
  ])('a price of %s: %s', (amount, code, data) => {
    expect(problemOf(at(amount, 40))).toEqual({ code, data });
    expect(problemOf({ lines: [{ piece: 'corsage', count: 2, price: { amount: decimal(amount), per: 'line' } }] })).toEqual({ code, data });
  });

  it('half a yen', () => {
    expect(problemOf(at('0.5'), { currency: 'JPY' })).toMatchObject({ code: 'price-below-smallest-coin', data: { smallest: '1' } });
    expect(problemOf(at('2500.5'), { currency: 'JPY' })).toMatchObject({ code: 'price-finer-than-coin' });
  });

  it.each([
    [0, 'count-not-positive'],
    [-5, 'count-not-positive'],
    [1.5, 'count-not-positive'],
    [1e9, 'count-too-large'],
  ])('%d pieces: %s', (count, code) => expect(problemOf(at('25', count))).toMatchObject({ code }));
});

describe('rates and multiples', () => {
  it.each([
    [{ rate: '100' }, 'rate-out-of-range', { what: 'tax', rate: '100' }],
    [{ rate: '250' }, 'rate-out-of-range', { what: 'tax', rate: '250' }],
    [{ rate: '-10' }, 'rate-out-of-range', { what: 'tax', rate: '-10' }],
    [{ share: '100', rule: 'out of the price' }, 'rate-out-of-range', { what: 'labour', rate: '100' }],
    [{ share: '-1' }, 'rate-out-of-range', { what: 'labour', rate: '-1' }],
    [{ stems: '0', sundriesMultiple: '4' }, 'multiple-not-positive', { what: 'stems', multiple: '0' }],
    [{ sundriesMultiple: '0' }, 'multiple-not-positive', { what: 'sundries', multiple: '0' }],
    [{ stems: '0.001' }, 'multiple-not-positive', { what: 'stems', multiple: '0.001' }],
    [{ stems: '4000' }, 'rule-not-understood', { what: 'stems multiple', to: '4000' }],
    [{ sundries: '-0.10' }, 'price-not-positive', { amount: '-0.1' }],
    [{ sundries: 'NaN' }, 'price-too-large', { amount: 'NaN' }],
  ] as [Case, string, object][])('%o: %s', (given, code, data) => {
    expect(problemOf(at('25', 40), given)).toEqual({ code, data });
  });

  it('labour of 100 % on product is only half the price', () => expect(problemOf(at('25', 40), { share: '100' })).toBe('priced'));
});

describe('sundries', () => {
  it('that use up the price are named with the room there is', () => {
    // 25 / 1.1 / 1.3 / 4 is 4.3706 (derived)
    expect(problemOf(at('25', 40), { sundries: '4.38' })).toEqual({
      code: 'sundries-use-up-price',
      data: { sundries: '4.38', room: '4.37', piece: 'buttonhole' },
    });
  });

  it('may take all of it to the penny', () => {
    expect(problemOf(at('26'), { basis: 'none', sundries: '5', stems: '4' })).toBe('priced');
    expect(problemOf(at('26'), { basis: 'none', sundries: '5.01', stems: '4' })).toMatchObject({ code: 'sundries-use-up-price' });
  });
});

describe('orders', () => {
  it.each([
    ['nothing at all', { lines: [] }, 'nothing-to-price'],
    ['no price', { lines: [{ piece: 'buttonhole', count: 4 }] }, 'price-missing'],
    [
      'a currency not the studio’s',
      { lines: [{ piece: 'buttonhole', count: 4 }], price: { amount: decimal(25), per: 'each', currency: 'USD' } },
      'other-currency',
    ],
    [
      'currencies mixed in one order',
      {
        lines: [
          { piece: 'buttonhole', count: 4, price: { amount: decimal(25), per: 'each', currency: 'AUD' } },
          { piece: 'corsage', count: 1, price: { amount: decimal(40), per: 'each', currency: 'NZD' } },
        ],
      },
      'other-currency',
    ],
    [
      'a total its lines already exceed',
      {
        lines: [
          { piece: 'buttonhole', count: 4, price: { amount: decimal(25), per: 'each' } },
          { piece: 'corsage', count: 1 },
        ],
        price: { amount: decimal(100), per: 'all' },
      },
      'total-below-line-prices',
    ],
  ] as [string, Order, string][])('%s: %s', (_, order, code) => {
    expect(problemOf(order)).toMatchObject({ code });
  });

  it('names the pieces that have no price', () => {
    const order: Order = {
      lines: [
        { piece: 'buttonhole', count: 8, price: { amount: decimal(18), per: 'each' } },
        { piece: 'flower crown', count: 1 },
      ],
    };
    expect(problemOf(order)).toEqual({ code: 'price-missing', data: { pieces: ['flower crown'] } });
  });
});

describe('never throws, whatever the numbers', () => {
  const wild = fc
    .oneof(fc.double(), fc.integer(), fc.constantFrom(0, 5e-324, 1e-9, 1e30, -1e30, Number.NaN, Number.POSITIVE_INFINITY))
    .map((value) => String(value));
  const likely = (least: number, most: number) =>
    fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: least, max: most }).map((value) => String(value / 100)) },
      { weight: 1, arbitrary: wild },
    );
  const settings = fc.record({ rate: likely(0, 3000), share: likely(0, 6000), stems: likely(100, 600), sundries: likely(0, 300) });

  it('every form of the answer', () => {
    fc.assert(
      fc.property(likely(1, 100_000), likely(100, 30_000), settings, (price, count, given) => {
        const lines = [
          { piece: 'buttonhole' as const, count: Number(count) },
          { piece: 'corsage' as const, count: 2 },
        ];
        const result = priceOrder({ lines, price: { amount: decimal(price), per: 'all' } }, terms(given));
        if (!result.ok) return;
        priceFigures(result.value);
        clientFigures(result.value);
        result.value.lines.map((line) => workingOf(line, result.value.currency));
        checkLabour(result.value, decimal('14.24'), () => 15);
      }),
      { numRuns: 1000 },
    );
  });

  it('every question', () => {
    fc.assert(
      fc.property(likely(1, 100_000), likely(1, 10_000), settings, (budget, each, given) => {
        const own = terms(given);
        countFor(decimal(budget), decimal(each), { piece: 'buttonhole' }, own);
        priceForStems({ piece: 'buttonhole' }, decimal(each), own);
        priceLadder(at('25', 4), own, { from: decimal(each), to: decimal(budget) });
      }),
      { numRuns: 300 },
    );
  });
});
