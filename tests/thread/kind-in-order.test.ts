// What a kind means in the order at hand: the only corsages there are, or a kind that is not there at all.

import { expect, it } from 'vitest';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import { isMissing, kindInOrder } from '../../src/thread/kind-in-order.ts';
import { replyTo } from '../support/plain-studio.ts';

const lines = (...pieces: PieceKind[]) => pieces.map((piece) => ({ piece, count: 6 }));

it.each([
  [['wrist corsage'], 'corsage', 'wrist corsage'],
  [['corsage', 'buttonhole'], 'wrist corsage', 'corsage'],
  [['wrist corsage', 'pin corsage'], 'corsage', 'corsage'], // either could be meant
  [['pin corsage'], 'wrist corsage', 'wrist corsage'], // another piece
  [['buttonhole'], 'flower crown', 'flower crown'],
] as const)('in an order of %j, “%s” means %s', (order, said, meant) => expect(kindInOrder(lines(...order), said)).toBe(meant));

it('misses a kind only where others are ordered', () => {
  expect(isMissing(lines('buttonhole'), 'corsage')).toBe(true);
  expect(isMissing([], 'corsage')).toBe(false);
  expect(isMissing(lines('unspecified'), 'corsage')).toBe(false);
});

it('swaps, prices and tries the corsages that are there', async () => {
  expect(await replyTo(['12 wrist corsages at 42 inc', 'swap the corsages for pin-ons'])).toMatch(
    /^Wrist corsages: 12 → 0\nPin corsages: 0 → 12/,
  );
  const ladder = await replyTo(['40 buttonholes at 25 inc, 6 wrist corsages at 42', 'try the corsages at 40 to 42']);
  expect(ladder).toContain('Only the wrist corsages change price; the rest stay as they are.');
  // 40 × 25 + 6 × 40 = 1,240; 40 × 25 + 6 × 42 = 1,252
  expect(ladder).toMatch(/£40\.00 .*£1,240\.00[\s\S]*£42\.00 .*£1,252\.00/);
});

it('says what the order holds when it is not there, and keeps nothing', async () => {
  expect(await replyTo(['12 buttonholes at 20 inc', 'the corsages are fresh'])).toContain(
    'There is no corsage in this order. It has: buttonhole.',
  );
});
