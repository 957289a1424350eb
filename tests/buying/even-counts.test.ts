// The counts at which packs come out even.
import { performance } from 'node:perf_hooks';
import { expect, test } from 'vitest';
import { buyingList } from '../../src/buying/buying-list.ts';
import { evenCounts } from '../../src/buying/even-counts.ts';
import type { Item } from '../../src/buying/item.ts';
import { type RecipeLine, stems } from '../../src/buying/recipe-lines.ts';
import { decimal } from '../../src/values/decimal.ts';
import { inGoodTime } from '../support/in-good-time.ts';
import { bunch } from './price-rows.ts';

const listOf = (lines: readonly RecipeLine[], items: readonly Item[]) => (pieces: number) =>
  buyingList([{ id: 'dance', batches: [{ piece: 'buttonhole', pieces, lines }], keeps: true, steps: [] }], items, {
    usualSpare: decimal(0),
  });

const tails = bunch('bunny tails', '14.50', 66); // three each: 22 pieces a bunch
const statice = bunch('statice', '6.00', 15);

test('44 use the same packs as 40', () => {
  const counts = evenCounts(40, listOf([stems('bunny tails', 3)], [tails]));
  expect(counts?.samePacks.count).toBe(44);
  expect(counts?.samePacks.spend.toFixed(2)).toBe('29.00');
  expect(counts?.samePacks.leftValue.toFixed(2)).toBe('0.00');
  expect(counts?.next.map(({ count }) => count)).toEqual([66]);
});

test('with two ingredients every pack that runs out ends a stretch', () => {
  const counts = evenCounts(40, listOf([stems('bunny tails', 3), stems('statice', 1)], [tails, statice]));
  expect(counts?.samePacks.count).toBe(44);
  expect(counts?.next.map(({ count, spend }) => `${count} ${spend.toFixed(2)}`)).toEqual(['45 61.50', '60 67.50']);
});

test('a count that is even already stays as it is', () => {
  expect(evenCounts(44, listOf([stems('bunny tails', 3)], [tails]))?.samePacks.count).toBe(44);
});

test('packs that never run out in sight give no advice', () => {
  expect(evenCounts(10, listOf([stems('pin', 1)], [bunch('pin', 4, 1000)]))).toBeUndefined();
});

test('a long price list does not slow the look ahead', () => {
  const long = [tails, statice, ...Array.from({ length: 2000 }, (_, at) => bunch(`plant no ${at}`, '5', 10))];
  const before = performance.now();
  evenCounts(300, listOf([stems('bunny tails', 3), stems('statice', 1)], long), 40);
  inGoodTime(performance.now() - before, 1000);
});
