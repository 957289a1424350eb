// Pieces to be made again that nobody had counted as made: the counts alone would not show that they were noted.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

it.each([
  [
    ['two bouts look ropey, will redo'],
    /^2 buttonholes to redo, noted; none were counted as made before\. 0 of 24 buttonholes made, 24 left/,
  ],
  [['did 1 bout', '2 bouts snapped'], /^2 buttonholes to redo, noted; only 1 was counted as made before\. 0 of 24/],
  [['did 9 bouts', 'two bouts look ropey, will redo'], /^7 of 24 buttonholes made, 17 left/],
  [['did 18', 'so 18 down 6 to go right?'], /^18 of 24 buttonholes made, 6 left/],
  [['did 9 bouts', 'on bout 13 now', '12 made so far'], /^12 of 24 buttonholes made, 12 left/],
] as const)('%j', async (lines, reply) => {
  expect(await replyTo(['24 bouts at 8 inc vat', ...lines])).toMatch(reply);
});
