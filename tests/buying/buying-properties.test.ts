// What holds for every buying list, whatever the events and the price list.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buyingList } from '../../src/buying/buying-list.ts';
import type { EventToBuy } from '../../src/buying/needs.ts';
import { cut, type RecipeLine, stems } from '../../src/buying/recipe-lines.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, spool } from './price-rows.ts';

const price = fc.integer({ min: 0, max: 5000 }).map((pence) => decimal(pence).div(100).toFixed(2));
const spare = fc.constantFrom(0, 5, 10, 20, 33);
const stock = fc.integer({ min: 0, max: 80 });
const items = fc.tuple(
  fc
    .record({ price, size: fc.integer({ min: 1, max: 100 }), spare, stock })
    .map((row) => bunch('statice', row.price, row.size, { spare: decimal(row.spare), stock: decimal(row.stock) })),
  fc
    .record({ price, size: fc.integer({ min: 1, max: 100 }), spare, stock })
    .map((row) => bunch('rose', row.price, row.size, { spare: decimal(row.spare), stock: decimal(row.stock) })),
  fc
    .record({
      price,
      size: fc.integer({ min: 2, max: 25 }),
      spare,
      stock: fc.integer({ min: 0, max: 9 }),
      unit: fc.constantFrom('m' as const, 'yd' as const),
    })
    .map((row) => spool('ribbon', row.price, row.size, row.unit, { spare: decimal(row.spare), stock: decimal(row.stock) })),
);
const lines: fc.Arbitrary<readonly RecipeLine[]> = fc
  .tuple(fc.constantFrom(0.5, 1, 1.5, 3), fc.constantFrom(1, 2, 0.25), fc.constantFrom(15, 30, 45, 100, 130))
  .map(([statice, rose, ribbon]) => [stems('statice', statice), stems('rose', rose), cut('ribbon', ribbon, 'cm')]);
const events: fc.Arbitrary<readonly EventToBuy[]> = fc
  .array(fc.record({ lines, pieces: fc.integer({ min: 1, max: 120 }), keeps: fc.boolean() }), { minLength: 1, maxLength: 5 })
  .map((all) =>
    all.map(({ lines, pieces, keeps }, at) => ({
      id: `event ${at}`,
      batches: [{ piece: 'buttonhole' as const, pieces, lines }],
      keeps,
      steps: [],
    })),
  );
const options = { usualSpare: decimal(0) };

test('pooling never buys more than every event buying for itself', () => {
  fc.assert(
    fc.property(events, items, (all, list) => {
      const noStock = list.map((item) => ({ ...item, stock: decimal(0) }));
      const pooled = buyingList(all, noStock, options);
      const packs = (rows: typeof pooled.rows, name: string) =>
        rows.filter((row) => row.item.name === name).reduce((total, row) => total + row.packs, 0);
      const apart = all.flatMap((event) => buyingList([event], noStock, options).rows);
      for (const { name } of list) expect(packs(pooled.rows, name)).toBeLessThanOrEqual(packs(apart, name));
    }),
    { numRuns: 300 },
  );
});

test('the saving is never negative, and is nothing for one event', () => {
  fc.assert(
    fc.property(events, items, (all, list) => {
      expect(buyingList(all, list, options).saving.gte(0)).toBe(true);
      expect(buyingList(all.slice(0, 1), list, options).saving.isZero()).toBe(true);
    }),
  );
});

test('without stock, spend is at least need times unit price', () => {
  fc.assert(
    fc.property(events, items, (all, list) => {
      const noStock = list.map((item) => ({ ...item, stock: decimal(0) }));
      const { rows } = buyingList(all, noStock, options);
      for (const item of noStock) {
        const own = rows.filter((row) => row.item === item);
        const spend = own.reduce((total, row) => total.plus(row.spend), decimal(0));
        const need = own.reduce((total, row) => total.plus(row.need), decimal(0));
        expect(spend.times(item.size).gte(need.times(item.packPrice).toDecimalPlaces(20))).toBe(true);
      }
    }),
  );
});

test('what is left over of anything bought is less than one pack', () => {
  fc.assert(
    fc.property(events, items, (all, list) => {
      for (const row of buyingList(all, list, options).rows) {
        expect(row.left.gte(0)).toBe(true);
        if (row.packs > 0) expect(row.left.lt(row.item.size)).toBe(true);
      }
    }),
  );
});

test('every stem and every metre is either needed, left over or off-cut', () => {
  fc.assert(
    fc.property(events, items, (all, list) => {
      const buying = buyingList(all, list, options);
      for (const item of list) {
        const rows = buying.rows.filter((row) => row.item.name === item.name);
        const total = rows.reduce((sum, row) => sum.plus(row.need).plus(row.left).plus(row.offcuts), decimal(0));
        const had = rows.reduce((sum, row) => sum.plus(item.size.times(row.packs)), item.stock ?? decimal(0));
        expect(total.minus(had).abs().lt('1e-20')).toBe(true);
      }
    }),
  );
});
