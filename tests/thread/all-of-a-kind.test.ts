// Words for all of the work beside a number are of the kind that was counted, where other kinds are ordered.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '24 bouts at 8, 18 wrist corsages at 18 inc vat';

it.each([
  [['24 bouts done thats all of them'], /^All 24 buttonholes made; 0 of 18 wrist corsages made/],
  [['24 bouts made, all made'], /^All 24 buttonholes made; 0 of 18 wrist corsages made/],
  [['all done, 24 bouts made'], /^All 24 buttonholes made; 0 of 18 wrist corsages made/],
  [['24 bouts and 18 corsages done thats all of them'], /^All 24 buttonholes made; all 18 wrist corsages made/],
  // Which twelve is asked, and nothing is made before it is said.
  [['12 done thats all of them'], /^Which pieces is “12 done” about\?/],
  [['12 done thats all of them', 'buttonhole'], /^All 24 buttonholes made; 0 of 18 wrist corsages made/],
  [['all 18 done'], /^0 of 24 buttonholes made, 24 left; all 18 wrist corsages made/],
  [['all 42 done'], /^All 24 buttonholes made; all 18 wrist corsages made/],
  // What is left says the whole: no 22 are added to it.
  [['all bouts done bar 2, 22 bouts made'], /^22 of 24 buttonholes made, 2 left/],
] as const)('%j', async (lines, reply) => {
  expect(await replyTo([order, ...lines])).toMatch(reply);
});
