// The price list a studio builds up by saying prices, and what changed since a quote.
import { describe, expect, test } from 'vitest';
import { priceChanges } from '../../src/buying/price-changes.ts';
import { packFact, priceListOf } from '../../src/buying/price-list.ts';
import { readPriceList } from '../../src/buying/read-price-list.ts';
import { type FactOf, factSchema } from '../../src/reading/fact.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, spool } from './price-rows.ts';

const pack = (item: string, price: string, rest: Partial<FactOf<'pack'>> = {}): FactOf<'pack'> => ({
  fact: 'pack',
  item,
  price,
  words: item,
  ...rest,
});
const gbp = { currency: 'GBP' };
const shown = (facts: readonly FactOf<'pack'>[]) =>
  priceListOf(facts, gbp).items.map((item) =>
    `${item.name} ${item.packPrice.toFixed()} / ${item.size.toFixed()} ${item.unit.name} ${item.pack ?? ''}`.trim(),
  );

describe('said', () => {
  test.each([
    [
      'bunny tails 14.50 a bunch of 50',
      pack('bunny tails', '14.50', { size: 50, unit: 'stem', per: 'bunch' }),
      'bunny tails 14.5 / 50 stem bunch',
    ],
    ['velvet ribbon 10 m spool 18', pack('velvet ribbon', '18', { size: 10, unit: 'm', per: 'spool' }), 'velvet ribbon 18 / 10 m spool'],
    ['foraged larch twigs, free', pack('larch twigs', '0', { dryingDays: 7 }), 'larch twigs 0 / 1 stem'],
    ['roses 1.20 a stem', pack('roses', '1.20', { per: 'stem' }), 'roses 1.2 / 1 stem'],
    ['spray roses 2.50 a stem, 10 stems a bunch', pack('spray roses', '2.50', { size: 10, per: 'stem' }), 'spray roses 25 / 10 stem'],
    ['ribbon 1.10 a metre', pack('ribbon', '1.10', { per: 'metre' }), 'ribbon 1.1 / 1 m'],
    ['pins 4 a box of 144', pack('pins', '4', { size: 144, unit: 'pin', per: 'box' }), 'pins 4 / 144 pin box'],
    [
      'lisianthus 14 to 16 a bunch of 10: the dearer counts',
      pack('lisianthus', '14', { priceMax: '16', size: 10, per: 'bunch' }),
      'lisianthus 16 / 10 stem bunch',
    ],
  ])('%s', (_words, fact, row) => {
    expect(shown([fact])).toEqual([row]);
  });

  test('a bunch of nobody knows how many is asked about', () => {
    expect(priceListOf([pack('statice', '6.50', { per: 'bunch' })], gbp)).toMatchObject({ items: [], unsized: ['statice'] });
  });
});

test('the newest price wins and keeps what it leaves unsaid, the name first given included, whatever the case or number it is said in', () => {
  const facts = [
    pack('bunny tails', '14.50', { size: 50, unit: 'stem', per: 'bunch', supplier: 'Saltmarsh Dried', stock: 12 }),
    pack('Bunny tail', '15.20', { per: 'bunch' }),
  ];
  const { items } = priceListOf(facts, gbp);
  expect(items).toHaveLength(1);
  expect(items[0]).toMatchObject({ name: 'bunny tails', supplier: 'Saltmarsh Dried' });
  expect([items[0]?.packPrice.toFixed(2), items[0]?.size.toFixed(), items[0]?.stock?.toFixed()]).toEqual(['15.20', '50', '12']);
});

test('a new pack size does not keep the old unit', () => {
  expect(
    shown([pack('ribbon', '18', { size: 10, unit: 'm', per: 'spool' }), pack('ribbon', '16', { size: 8, unit: 'yd', per: 'spool' })]),
  ).toEqual(['ribbon 16 / 8 yd spool']);
});

test('a price that includes tax loses it when the studio gets it back', () => {
  const fact = pack('rose', '12.00', { size: 10, basis: 'included' });
  expect(priceListOf([fact], { currency: 'GBP', taxRate: decimal(20) }).items[0]?.packPrice.toFixed()).toBe('10');
  expect(priceListOf([fact], gbp).items[0]?.packPrice.toFixed()).toBe('12');
});

test.each([
  ['no stems in the bunch', pack('rose', '12', { size: 0 }), 'pack-size-not-positive'],
  ['less than nothing', pack('rose', '-1', { size: 10 }), 'pack-price-negative'],
  ['another currency', pack('rose', '12', { size: 10, currency: 'EUR' }), 'other-currency'],
])('%s is a problem and the rest of the list stands', (_name, fact, code) => {
  const list = priceListOf([pack('statice', '6', { size: 10 }), fact], gbp);
  expect(list.problems.map((one) => one.code)).toEqual([code]);
  expect(list.items.map((item) => item.name)).toEqual(['statice']);
});

test('an imported list is stored as facts and read back the same', () => {
  const csv =
    'item,price,size,unit,pack,supplier,lead,spare,stock,drying,role,note\nlarkspur,10.40,10,stem,bunch,Ferrygate,2,100,5,18,line,"hang, at once"\nribbon,11.20,8,yd,spool,,,,4.5,,sundry,';
  const read = readPriceList(csv, gbp);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  const facts = read.value.items.map(packFact);
  for (const fact of facts) expect(factSchema.parse(JSON.parse(JSON.stringify(fact)))).toEqual(fact);
  expect(priceListOf(facts, gbp).items).toEqual(read.value.items);
});

describe("today's prices against the quote's", () => {
  const quoted = [bunch('bunny tails', '14.50', 50), bunch('statice', '6', 10), bunch('rose', '11', 10), spool('ribbon', '9', 10, 'm')];
  const today = [bunch('Bunny tail', '15.20', 50), bunch('statice', '6', 8), spool('ribbon', '9', 10, 'm'), bunch('fern', '5', 20)];
  test('dearer, smaller, gone and new', () => {
    expect(priceChanges(quoted, today)).toEqual([
      { change: 'price', item: 'Bunny tail', from: '14.5', to: '15.2', dearer: true },
      { change: 'pack', item: 'statice', from: '6 for 10 stem', to: '6 for 8 stem', dearer: true },
      { change: 'gone', item: 'rose' },
      { change: 'new', item: 'fern' },
    ]);
  });
  test('only what the thread uses', () => {
    expect(priceChanges(quoted, today, ['bunny tails', 'ribbon']).map((one) => one.item)).toEqual(['Bunny tail']);
  });
  test('nothing changed', () => {
    expect(priceChanges(quoted, quoted)).toEqual([]);
  });
});
