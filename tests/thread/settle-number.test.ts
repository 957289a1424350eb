// A bare number put right: what it can mean in this thread is asked, and nothing is guessed.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

it.each([
  [['30 bouts at 12 inc', 'make it 36'], /^What does “make it 36” set\?\nSay: 36 pieces \/ 36 each/],
  // No price yet: “at what price each?” is open, and it may be the number put right.
  [['45 bouts', 'make it 40'], /^What does “make it 40” set\?\nSay: 40 pieces \/ 40 each/],
  [['45 bouts', 'make it 40', '40 pieces'], /^Buttonholes: 45 → 40/],
  [['45 bouts', 'make it 40 each'], /^45 buttonholes at £40\.00/],
  [['30 bouts', '12 done', 'oops 11'], /^What does “oops 11” set\?\nSay: 11 pieces \/ 11 made/],
  [['30 bouts at 12 inc', '12 done', 'oops 11'], /^What does “oops 11” set\?\nSay: 11 pieces \/ 11 each \/ 11 made/],
  [['30 bouts at 12 inc', '12 done', 'oops 11', '11 made'], /^11 of 30 buttonholes made, 19 left\./],
  [['12 bouts at 14 inc', '5 more'], /^Buttonholes: 12 → 17/],
  [['12 bouts at 14 inc', 'did 5', '5 more'], /^What does “5 more” set\?\nSay: 5 more ordered \/ 5 more made/],
  [['12 bouts at 14 inc', 'did 5', '5 more', 'made'], /^10 of 12 buttonholes made, 2 left\./],
  [['12 bouts at 14 inc', 'did 5', '5 more', '5 more ordered'], /^Buttonholes: 12 → 17/],
  [['12 bouts at 14 inc', 'did 5', '5 more bouts'], /^Buttonholes: 12 → 17/],
  [['40 bouts at 12 inc', '20 done', '18 not 20'], /^18 of 40 buttonholes made, 22 left\./],
  [['30 bouts', '30 done', '28 not 30'], /^What does “28 not 30” set\?\nSay: 28 pieces \/ 28 made/],
  // Half a piece counts nothing: it is what each costs.
  [['12 bouts at 12 inc', 'no 12.50 not 12'], /^Buttonholes: £12\.00 → £12\.50 each/],
  [['12 bouts at 12 inc', '12.50 not 10'], /^Buttonholes: £12\.00 → £12\.50 each/],
  // Nothing is ordered and nothing costs anything yet.
  [['ok 400 it is'], /^What does “ok 400 it is” set\?\nSay: 400 pieces \/ 400 each \/ 400 in all/],
  [['ok 400 it is', '400 in all', '16 bouts'], /^16 buttonholes at £25\.00/],
  [['make it 12.50'], /^What does “make it 12\.50” set\?\nSay: 12\.5 each \/ 12\.5 in all/],
  // What was counted before anyone named it.
  [['40 pieces at 12 inc', 'actually 16 bouts'], /^16 buttonholes at £12\.00/],
  // Two kinds are begun: those told of last may be meant, or none of them.
  [
    ['30 bouts at 12 inc, 4 crowns at 60', '12 bouts done', '2 crowns done', 'oops 3'],
    /^What does “oops 3” set\?\nSay: 3 pieces \/ 3 each \/ 3 flower crowns made/,
  ],
  // The last handful is put right, and the others stay made.
  [
    ['24 bouts at 8 inc', 'did 6', 'did another 9', 'hang on it was 8'],
    /^What does “hang on it was 8” set\?\nSay: 8 pieces \/ 8 each \/ 8 made, not 9 \/ 8 made in all/,
  ],
  [['24 bouts at 8 inc', 'did 6', 'did another 9', 'hang on it was 8', '8 made, not 9'], /^14 of 24 buttonholes made, 10 left\./],
  [['24 bouts at 8 inc', 'did 6', 'did another 9', 'it was 8 not 9'], /^14 of 24 buttonholes made, 10 left\./],
  [
    ['24 bouts at 8 inc', 'did 6', 'did another 9', '15 made now', 'hang on it was 8'],
    /^What does .+\nSay: 8 pieces \/ 8 each \/ 8 made$/m,
  ],
  [['24 bouts at 8 inc', 'did 5', 'hold on it was 6 bouts', '6 made'], /^6 of 24 buttonholes made, 18 left\./],
] as const)('%j', async (lines, reply) => {
  expect(await replyTo(lines)).toMatch(reply);
});

it.each([
  // 40 is the number of one kind alone, and 28 the price of one.
  ['actually 45 not 40', /^Buttonholes: 40 → 45/],
  ['30 not 28', /^Corsages: £28\.00 → £30\.00 each/],
  ['price is 14 not 12', /^Buttonholes: £12\.00 → £14\.00 each\n(?!Corsages)/],
  ['price is 14 now', /^Which pieces is “price is 14 now” about\?\nSay: buttonhole \/ corsage \/ all of them/],
  ['make them all 14 each', /^Buttonholes: £12\.00 → £14\.00 each\nCorsages: £28\.00 → £14\.00 each/],
  ["they're paying 600 all in", /^Total: £704\.00 → £600\.00\n40 buttonholes, 8 corsages, £600\.00 in all/],
])('in an order of 40 at 12 and 8 at 28, “%s”', async (said, reply) => {
  expect(await replyTo(['40 bouts 12 each, 8 corsages 28 inc vat', said])).toMatch(reply);
});

it('puts one price on all of them when told so', async () => {
  const reply = await replyTo(['40 bouts 12 each, 8 corsages 28 inc vat', 'price is 14 now', 'all of them']);
  expect(reply).toMatch(/^Buttonholes: £12\.00 → £14\.00 each\nCorsages: £28\.00 → £14\.00 each/);
});

it('asks which number is meant where two of them were the same', async () => {
  expect(await replyTo(['12 bouts at 12 inc', 'no 14 not 12'])).toMatch(/^What does “no 14 not 12” set\?\nSay: 14 pieces \/ 14 each/);
});
