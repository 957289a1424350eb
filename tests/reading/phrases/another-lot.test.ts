// "also 3 kids buttonholes at 8" where buttonholes are ordered at another price: a second lot beside the first.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { replyTo } from '../../support/plain-studio.ts';
import { context } from '../support/context.ts';

const some = { ...context, pieces: ['buttonhole'] as const };
const bare = (said: string, within: typeof context = some) => readMessage(said, within).facts.map(({ words: _, ...fact }) => fact);

it.each([
  'also 3 kids buttonholes at 8',
  'plus 3 bouts at 8',
  'and also 3 buttonholes for the kids, 8 each',
  "also three kids' buttonholes, 8 each please",
  'oh and 3 mini bouts at 8',
  'on top of that 3 bouts at 8',
])('%s: three more at their own price', (said) =>
  expect(bare(said)).toEqual([
    { fact: 'change', what: 'count', by: 3, piece: 'buttonhole' },
    { fact: 'price', amount: '8', per: 'each', piece: 'buttonhole' },
  ]),
);

it.each(['3 kids buttonholes at 8', '3 small bouts, 8 each'])('%s: more or all there are is asked', (said) => {
  const { facts, asks } = readMessage(said, some);
  expect(facts).toEqual([]);
  expect(asks.map(({ choices }) => choices.map(({ words }) => words))).toEqual([['3 more', '3 in all']]);
});

describe('what orders as before', () => {
  it.each(['3 bouts at 8', 'also 2 corsages at 30', '3 ushers bouts at 12'])('%s', (said) =>
    expect(bare(said).map(({ fact }) => fact)).toEqual(['pieces', 'price']),
  );
});

describe('in the thread', () => {
  const order = '10 bouts at 14.50 inc vat';
  it('both lots keep their price', async () => expect(await replyTo([order, 'also 3 kids buttonholes at 8'])).toContain('169.00'));
  it('and so they do behind the question', async () =>
    expect(await replyTo([order, '3 kids buttonholes at 8', '3 more'])).toContain('169.00'));
  it('what may be wanted is not kept', async () =>
    expect(await replyTo([order, 'they might want 4 crowns at 70', 'total?'])).toContain('145.00'));
  it('a small sum never becomes the price', async () => expect(await replyTo([order, 'no, 9 altogether', 'total?'])).toContain('145.00'));
  it('not even while a price is asked for', async () =>
    expect(await replyTo([order, '2 corsages', 'no, 9 altogether'])).toContain('9 made so far'));
  it('nor is the price behind another kind their number', async () =>
    expect(await replyTo(['2 pin corsages 35 each inc', 'the corsages should be wrist not pin, 45', '45 each', 'total?'])).toContain(
      '90.00',
    ));
});
