// What a kind means in the order at hand: the only corsages there are, or a kind that is not there at all.

import { describe, expect, it } from 'vitest';
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

describe('some of one kind made another', () => {
  it.each([
    ['change 4 of the bouts to pin corsages', 'Buttonholes: 12 → 8\nPin corsages: 0 → 4'],
    ['fob wants a corsage instead of a bout', 'Buttonholes: 12 → 11\nCorsages: 0 → 1'],
    ['both mums want combs not bouts', 'Buttonholes: 12 → 10\nHair flowers: 0 → 2'],
  ])('%s', async (said, changes) => {
    expect((await replyTo(['12 buttonholes at 20 inc', said])).startsWith(changes)).toBe(true);
  });

  it('takes one out of those whose kind nobody said', async () => {
    expect(await replyTo(['3 corsages at 28 inc', 'mob wants a wrist corsage not a pin on'])).toMatch(
      /^Corsages: 3 → 2\nWrist corsages: 0 → 1/,
    );
  });
});

describe('all of one kind made another', () => {
  it.each([
    ['make the 4 corsages wrist ones', '4 corsages at 28 inc', /^Corsages: 4 → 0\nWrist corsages: 0 → 4/],
    ['for the 4 corsages, do wrist ones instead', '4 corsages at 28 inc', /^Corsages: 4 → 0\nWrist corsages: 0 → 4/],
    ['the 4 corsages, do wrist ones instead', '4 pin corsages at 28 inc', /^Pin corsages: 4 → 0\nWrist corsages: 0 → 4/],
    ['the 4 pin corsages, do them as wrist ones instead', '4 corsages at 28 inc', /^Corsages: 4 → 0\nWrist corsages: 0 → 4/],
    ['swap the 4 pin corsages for wrist ones', '4 corsages at 28 inc', /^Corsages: 4 → 0\nWrist corsages: 0 → 4/],
    [
      'the 4 pin corsages, do them as wrist ones',
      '4 pin corsages and 2 wrist corsages at 28 inc',
      /^Pin corsages: 4 → 0\nWrist corsages: 2 → 6/,
    ],
  ])('%s', async (said, order, changes) => {
    expect(await replyTo([`${order}, 8 bouts at 12`, said])).toMatch(changes);
  });
});

it('says that there are none of what is to go', async () => {
  const reply = await replyTo(['12 buttonholes at 20 inc', 'client doesnt want the crowns any more']);
  expect(reply).toContain('There is no flower crown in this order. It has: buttonhole.');
});

it('puts others in the place of what was never ordered', async () => {
  expect(await replyTo(['12 buttonholes at 20 inc', '20 crowns instead of the combs'])).toMatch(/^Flower crowns: 0 → 20/);
});

it('asks for the prices of several new kinds in one breath', async () => {
  expect(await replyTo(['12 buttonholes at 20 inc', 'add 2 crowns', 'add 3 combs', 'add 4 wrist corsages'])).toContain(
    'No price yet for the flower crowns, hair flowers and wrist corsages. What are they each?',
  );
});

describe('what broke without a word for it', () => {
  const order = '30 buttonholes and 6 wrist corsages';
  it('is of the only kind that is made', async () => {
    expect(await replyTo([order, 'made 10 bouts', '2 of them broke'])).toMatch(/^8 of 30 buttonholes made, 22 left/);
  });
  it('is asked once two kinds are made', async () => {
    expect(await replyTo([order, 'made 10 bouts and 2 wrist corsages', '2 of them broke'])).toContain('Which pieces');
  });
});
