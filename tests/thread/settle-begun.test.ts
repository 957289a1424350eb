// A number of an ordered kind behind a word of progress is made or ordered: it is asked, and no order is cut down in silence.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '24 bouts at 8, 18 wrist corsages at 18 inc vat';

it.each([
  [['finished 12 corsages', '15 bouts too'], /^What does “15 bouts” set\?\nSay: 15 buttonholes made \/ 15 ordered, not 24/],
  [['finished 12 corsages', '15 bouts too', '15 buttonholes made'], /^15 of 24 buttonholes made, 9 left; 12 of 18 wrist corsages made/],
  [['finished 12 corsages', 'and 15 bouts'], /^What does “and 15 bouts” set\?\nSay: 15 buttonholes made \/ 15 more ordered/],
  [
    ['15 bouts done', 'nah 14 bouts, one was a dud'],
    /^What does .+\nSay: 14 made, not 15 \/ 14 buttonholes more made \/ 14 ordered, not 24/,
  ],
  [['15 bouts done', 'nah 14 bouts, one was a dud', '14 made, not 15'], /^14 of 24 buttonholes made, 10 left/],
  // Words of the order leave no doubt, and neither does an order nobody has begun.
  [['15 bouts done', 'another 2 bouts'], /^Buttonholes: 24 → 26/],
  [['make it 20 bouts'], /^Buttonholes: 24 → 20/],
  [['20 bouts'], /^Buttonholes: 24 → 20/],
  // What is left is of the kind just made where the two add up to what is ordered.
  [['corsages 15 done 3 to go'], /^0 of 24 buttonholes made, 24 left; 15 of 18 wrist corsages made, 3 left\.(?![\s\S]*Which pieces)/],
  [['corsages 5 done 3 to go'], /Which pieces is “3 to go” about\?/],
  // The number that was not reached is none of what is made.
  [['did 13 bouts', "didn't get to 20, only 16 lapels made"], /^16 of 24 buttonholes made, 8 left/],
] as const)('%j', async (lines, reply) => {
  expect(await replyTo([order, ...lines])).toMatch(reply);
});
