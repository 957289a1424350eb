// So many at a price, of what nobody says: asked, unless the thread has one kind alone.

import { describe, expect, it } from 'vitest';
import type { PieceKind } from '../../../src/handbook/pieces.ts';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

const within = (...pieces: PieceKind[]) => ({ ...context, pieces });

describe('nothing ordered yet', () => {
  it.each(['40 at 25', '40 at 25 inc vat', '40 @ 25 each', '40 at £25', 'ok 40 at 25 dried'])('“%s” is asked about', (said) => {
    const { facts, asks } = readMessage(said, within());
    expect(asks.map(({ why, choices }) => [why, choices.map(({ words }) => words)])).toEqual([
      ['which piece', ['buttonhole', 'corsage', 'flower crown']],
    ]);
    expect(facts.filter(({ fact }) => fact === 'pieces' || fact === 'price')).toEqual([]);
  });
});

it('is the one kind of the thread', () => {
  expect(readMessage('40 at 25 inc', within('corsage')).facts).toMatchObject([
    { fact: 'pieces', piece: 'corsage', count: 40, price: { amount: '25', per: 'each' } },
    { fact: 'tax', basis: 'included' },
  ]);
});

it('asks of the kinds there are', () => {
  const [ask] = readMessage('40 at 25', within('corsage', 'hair flower')).asks;
  expect(ask?.choices.map(({ words }) => words)).toEqual(['corsage', 'hair flower']);
});

describe('hours, addresses and other things', () => {
  it.each([
    '2 at 3',
    '12 at 12',
    '6 at 14:00',
    'lunch for 5 at £12',
    'seats 20 at 22 high st',
    '50 at the gig',
    '3 at £25 each for the van',
  ])('%s', (said) => expect(readMessage(said, within())).toMatchObject({ facts: [], asks: [] }));
});
