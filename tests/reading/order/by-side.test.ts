// A kind counted on either side: each line's words are its own, for “why?” says them back.

import { expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

it.each([
  ["groom's side 8, bride's side 7, all buttonholes", ["groom's side 8", "bride's side 7, all buttonholes"]],
  ['9 for her family and 6 for his side, all bouts', ['9 for her family', '6 for his side, all bouts']],
  ["bouts: bride's side 9, groom's side 6", ["bouts: bride's side 9", "groom's side 6"]],
  ['his side 8 n her side 7 bouts', ['his side 8', 'her side 7 bouts']],
])('%s', (text, words) => {
  expect(readMessage(text, context).facts.map((fact) => fact.words)).toEqual(words);
});
