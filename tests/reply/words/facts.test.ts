// What “why?” says of the work a message told of: how many, of what, and whether again.

import { expect, test } from 'vitest';
import { talk } from '../../support/converse.ts';

test.each([
  ['22 buttonholes done', 'made 22 buttonholes'],
  ['1 buttonhole done', 'made 1 buttonhole'],
  ['half of the bouts made', 'made 50 % of the buttonholes'],
  ['all buttonholes done', 'made all the buttonholes'],
  ['made 3, 1 broke, remade 1', 'remade 1 buttonhole'],
  ['18 left', '18 buttonholes left'],
])('%s: %s', async (said, words) => {
  expect(await talk(['40 buttonholes at 25 inc tax', said, 'why?'])).toContain(words);
});

test('a price by the stem stays one, however many come in a pack', async () => {
  expect(await talk(['spray roses 2.50 a stem, 10 stems per bunch', 'why?'])).toContain('£2.50 a stem, 10 to a pack');
});
