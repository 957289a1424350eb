// A range or a rough number is said, the figures are for one, and the reply says which; a placed coin and a noted basis are named.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

it.each([
  ['40 to 45 buttonholes at 25 inc', 'Worked out for 40 buttonholes, the fewest of 40 to 45.'],
  ['about 30 corsages at 30 inc', 'Worked out for exactly 30 corsages, as about that many was said.'],
])('%s', async (said, told) => expect(await replyTo([said])).toContain(told));

it('names the part that took the last coin', async () => {
  // 100 ÷ 7 = 14.285714…; 14.29 − 2.38 = 11.91, where 11.904761… alone would round to 11.90.
  expect(await replyTo(['total 100 inc for 7 buttonholes', 'show working'])).toContain(
    'The last coin is placed so that the parts add up: Before tax.',
  );
});

it('says back what it noted before there is anything to work out', async () => {
  expect(await replyTo(['no, ex tax'])).toContain('Noted: tax on top.');
});
