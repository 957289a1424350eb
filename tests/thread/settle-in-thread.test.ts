// A bare number put right: what it can mean in this thread is asked, and nothing is guessed.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

it.each([
  [['30 bouts at 12 inc', 'make it 36'], /^What does “make it 36” set\?\nSay: 36 pieces \/ 36 each/],
  [['30 bouts', '12 done', 'oops 11'], /^What does “oops 11” set\?\nSay: 11 pieces \/ 11 made/],
  [['30 bouts at 12 inc', '12 done', 'oops 11'], /^What does “oops 11” set\?\nSay: 11 pieces \/ 11 each \/ 11 made/],
  [['30 bouts at 12 inc', '12 done', 'oops 11', '11 made'], /^11 of 30 buttonholes made, 19 left\./],
  // Two kinds are begun: which of them is meant, the number does not say.
  [
    ['30 bouts at 12 inc, 4 crowns at 60', '12 bouts done', '2 crowns done', 'oops 3'],
    /^What does “oops 3” set\?\nSay: 3 pieces \/ 3 each/,
  ],
] as const)('%j', async (lines, reply) => {
  expect(await replyTo(lines)).toMatch(reply);
});
