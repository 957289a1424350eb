// What “why?” says of the work a message told of: how many, of what, and whether again.

import { expect, test } from 'vitest';
import { mannerOf } from '../../../src/reply/answer.ts';
import { factWords } from '../../../src/reply/words/facts.ts';
import { yard } from '../../handover/an-event.ts';
import { talk } from '../../support/converse.ts';

const plainText = (line: readonly { readonly text: string }[]): string => line.map(({ text }) => text).join('');

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

test.each([
  ['10 bouts at 9.50, 2 corsages at 30', '10 buttonholes, £9.50 each'],
  ['12-15 corsages', '12 to 15 corsages'],
  ['20 bouts, budget of £300', 'price a budget of £300.00 in all'],
  ['10 of the bouts are wired', '10 buttonholes wired, not finished'],
  ['3 of us friday 29 january 9 to 1', 'bench: 3 people, 4 h each, Fri 29 January 2027'],
  ['plus vat', 'VAT on top'],
])('%s: %s', async (said, words) => {
  expect(await talk([said, 'why?'])).toContain(words);
});

test('a price in another sign keeps it, from one to the other', () => {
  const said = {
    fact: 'pieces',
    piece: 'buttonhole',
    count: 8,
    price: { amount: '17', amountMax: '20', per: 'each', symbol: '$' },
    words: '',
  } as const;
  expect(plainText(factWords(said, mannerOf(yard)))).toBe('8 buttonholes, $17 to $20 each');
});
