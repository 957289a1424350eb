// What to buy for one event and for several.
import { describe, expect, test } from 'vitest';
import { againstBudget, type BuyingOptions, buyingList } from '../../src/buying/buying-list.ts';
import type { EventToBuy } from '../../src/buying/needs.ts';
import { cut, type RecipeLine, stems } from '../../src/buying/recipe-lines.ts';
import type { Day } from '../../src/values/day.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, spool } from './price-rows.ts';

const anEvent = (id: string, pieces: number, lines: readonly RecipeLine[], rest: Partial<EventToBuy> = {}): EventToBuy => ({
  id,
  batches: [{ piece: 'buttonhole', pieces, lines }],
  keeps: true,
  steps: [],
  ...rest,
});
const noSpare: BuyingOptions = { usualSpare: decimal(0) };
const figures = (list: ReturnType<typeof buyingList>) =>
  list.rows.map((row) => [row.item.name, row.need.toFixed(), row.packs, row.spend.toFixed(2), row.left.toFixed()]);

describe('one event', () => {
  test('40 pieces of 3 bunny tails with a tenth spare: 132 stems, 3 bunches of 50, 18 left', () => {
    const list = buyingList(
      [anEvent('dance', 40, [stems('bunny tails', 3)])],
      [bunch('bunny tails', '14.50', 50, { spare: decimal(10) })],
      noSpare,
    );
    expect(figures(list)).toEqual([['bunny tails', '132', 3, '43.50', '18']]);
    expect(list.leftValue.toFixed(2)).toBe('5.22');
    expect(list.each?.toFixed(4)).toBe('1.0875');
  });

  // 20 % more in each category: a flower farm's page on how many stems a wedding takes, 2014, http://fernwoodfarmllc.com/howmany.htm
  test("the studio's usual spare is for plants without a spare of their own", () => {
    const items = [bunch('rose', '12', 10), bunch('pin', '4', 100, { role: 'sundry' }), bunch('statice', '6', 10, { spare: decimal(0) })];
    const list = buyingList([anEvent('dance', 10, [stems('rose', 1), stems('pin', 2), stems('statice', 1)])], items, {
      usualSpare: decimal(20),
    });
    expect(figures(list)).toEqual([
      ['rose', '12', 2, '24.00', '8'],
      ['pin', '20', 1, '4.00', '80'],
      ['statice', '10', 1, '6.00', '0'],
    ]);
  });

  test('half stems make whole stems only at the end', () => {
    const list = buyingList([anEvent('dance', 25, [stems('eucalyptus', 0.5)])], [bunch('eucalyptus', '6.50', 10)], noSpare);
    expect(figures(list)).toEqual([['eucalyptus', '13', 2, '13.00', '7']]);
  });

  test('five stems that make three pieces: 42 pieces take 70 stems, not 71', () => {
    const list = buyingList([anEvent('dance', 42, [stems('statice', 5 / 3)])], [bunch('statice', '5', 10)], noSpare);
    expect(figures(list)).toEqual([['statice', '70', 7, '35.00', '0']]);
  });

  test('stock is used before anything is bought', () => {
    const items = [bunch('statice', '6', 10, { stock: decimal(25) })];
    expect(figures(buyingList([anEvent('a', 30, [stems('statice', 1)])], items, noSpare))).toEqual([['statice', '30', 1, '6.00', '5']]);
    expect(figures(buyingList([anEvent('a', 20, [stems('statice', 1)])], items, noSpare))).toEqual([['statice', '20', 0, '0.00', '5']]);
  });

  test('what is foraged costs nothing and is still on the list', () => {
    const list = buyingList([anEvent('a', 12, [stems('larch twigs', 1)])], [bunch('larch twigs', 0, 1, { dryingDays: 7 })], noSpare);
    expect(figures(list)).toEqual([['larch twigs', '12', 12, '0.00', '0']]);
  });

  test('true wholesale each against the budget', () => {
    const list = buyingList([anEvent('a', 40, [stems('rose', 1)])], [bunch('rose', '20', 25)], noSpare);
    const { over, overEach } = againstBudget(list, decimal('36'));
    expect([list.each?.toFixed(2), over.toFixed(2), overEach?.toFixed(2)]).toEqual(['1.00', '4.00', '0.10']);
  });

  test('pieces without a recipe are counted apart, and missing prices named once', () => {
    const event = anEvent('a', 8, [stems('rajnigandha', 3)]);
    const list = buyingList([{ ...event, batches: [...event.batches, { piece: 'corsage', pieces: 2, lines: [] }] }, event], [], noSpare);
    expect([list.pieces, list.piecesWithoutRecipe]).toEqual([16, 2]);
    expect(list.missing).toEqual([{ ingredient: 'rajnigandha', why: 'no price', nearest: [] }]);
  });
});

describe('lengths are cut whole', () => {
  const ribbon = spool('velvet ribbon', '18', 8, 'yd');
  test.each([
    [24, 1],
    [25, 2],
    [48, 2],
    [49, 3],
  ])('%i pieces at 30 cm from spools of 8 yd: %i', (pieces, spools) => {
    expect(buyingList([anEvent('a', pieces, [cut('ribbon', 30, 'cm')])], [ribbon], noSpare).rows[0]?.packs).toBe(spools);
  });

  test('a metre each: what is too short for another piece is off-cut, not left over', () => {
    const list = buyingList([anEvent('a', 3, [cut('ribbon', 1.5, 'm')])], [spool('ribbon', '5', 2, 'm')], noSpare);
    const [row] = list.rows;
    expect([row?.packs, row?.left.toFixed(), row?.offcuts.toFixed()]).toEqual([3, '0.5', '1']);
  });

  test('long and short lengths share a spool', () => {
    const events = [anEvent('a', 10, [cut('ribbon', 30, 'cm')]), anEvent('b', 4, [cut('ribbon', 1, 'm')])];
    const list = buyingList(events, [spool('ribbon', '9', 7, 'm')], noSpare);
    expect([list.rows[0]?.packs, list.rows[0]?.left.toFixed(), list.saving.toFixed()]).toEqual([1, '0', '9']);
  });

  test('a length in hand is used first', () => {
    const stocked = { ...ribbon, stock: decimal('2.5') }; // 2.286 m: 7 pieces
    expect(buyingList([anEvent('a', 31, [cut('ribbon', 30, 'cm')])], [stocked], noSpare).rows[0]?.packs).toBe(1);
    expect(buyingList([anEvent('a', 32, [cut('ribbon', 30, 'cm')])], [stocked], noSpare).rows[0]?.packs).toBe(2);
  });
});

describe('several events', () => {
  const rose = bunch('rose', '12.00', 25, { supplier: 'Quayside Cut Flowers' });
  const tails = bunch('bunny tails', '14.50', 50, { supplier: 'Saltmarsh Dried', role: 'focal' });
  const both = [stems('bunny tails', 1), stems('rose', 1)];
  const days: Readonly<Record<string, Day>> = { early: '2027-03-01' as Day, late: '2027-03-20' as Day };
  const options: BuyingOptions = { usualSpare: decimal(0), orderDay: (_item, event) => days[event] };

  test('needs are put together before rounding up, and the saving is named', () => {
    const list = buyingList([anEvent('early', 20, both), anEvent('late', 20, both)], [rose, tails], options);
    expect(list.rows.map((row) => [row.item.name, row.need.toFixed(), row.packs, row.orderBy, row.events])).toEqual([
      ['bunny tails', '40', 1, '2027-03-01', ['early', 'late']],
      ['rose', '40', 2, '2027-03-01', ['early', 'late']],
    ]);
    expect(list.saving.toFixed(2)).toBe('14.50');
  });

  test('fresh stems are bought for their own day', () => {
    const fresh = { keeps: false };
    const list = buyingList([anEvent('early', 20, both, fresh), anEvent('late', 20, both, fresh)], [rose, tails], options);
    expect(list.rows.map((row) => [row.item.name, row.packs, row.orderBy])).toEqual([
      ['bunny tails', 1, '2027-03-01'],
      ['bunny tails', 1, '2027-03-20'],
      ['rose', 1, '2027-03-01'],
      ['rose', 1, '2027-03-20'],
    ]);
  });

  test('one list per supplier and order day, the earliest first and what has no day last', () => {
    const list = buyingList(
      [anEvent('early', 20, both), anEvent('undated', 5, [stems('larch', 1)])],
      [rose, tails, bunch('larch', 0, 1)],
      options,
    );
    expect(list.groups.map((group) => [group.orderBy, group.supplier, group.spend.toFixed(2)])).toEqual([
      ['2027-03-01', 'Quayside Cut Flowers', '12.00'],
      ['2027-03-01', 'Saltmarsh Dried', '14.50'],
      [undefined, undefined, '0.00'],
    ]);
  });
});

describe('ordered and received', () => {
  const items = [bunch('rose', '12', 25), bunch('bunny tails', '14.50', 50)];
  const both = [stems('rose', 1), stems('bunny tails', 1)];
  const step = (name: 'ordered' | 'received', item?: string) =>
    ({ fact: 'step', step: name, ...(item === undefined ? {} : { item }), words: name }) as const;

  test.each([
    ['the roses alone', [step('ordered', 'roses')], ['ordered', 'to order']],
    ['everything', [step('ordered')], ['ordered', 'ordered']],
    ['ordered, and then one came', [step('ordered'), step('received', 'bunny tail')], ['ordered', 'received']],
  ])('%s', (_name, steps, status) => {
    const list = buyingList([anEvent('a', 10, both, { steps })], items, noSpare);
    expect(list.rows.map((row) => row.status)).toEqual(status);
  });

  test('what an ordered bunch leaves over serves the next event', () => {
    const events = [anEvent('a', 40, [stems('bunny tails', 1)], { steps: [step('ordered')] }), anEvent('b', 8, [stems('bunny tails', 1)])];
    const list = buyingList(events, items, noSpare);
    expect(list.rows.map((row) => [row.status, row.packs, row.left.toFixed()])).toEqual([
      ['ordered', 1, '0'],
      ['to order', 0, '2'],
    ]);
  });
});
