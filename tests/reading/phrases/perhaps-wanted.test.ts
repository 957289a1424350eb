// "they might want 4 crowns at 70" where pieces are ordered: worked out, asked about or held, never ordered.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

const some = { ...context, pieces: ['buttonhole'] as const };
const bare = (said: string, within: typeof context = some) => readMessage(said, within).facts.map(({ words: _, ...fact }) => fact);

it.each([
  'they might want 4 crowns at 70',
  'she might want four crowns at seventy each',
  'thinking of adding 4 crowns at 70',
  'possibly 4 crowns at 70',
  '4 crowns at 70 maybe',
  'they were thinking 4 crowns at 70',
  'ok so the bride may go for 4 crowns at 70',
])('%s: only worked out', (said) =>
  expect(bare(said)).toEqual([{ fact: 'question', asks: 'whatIf', piece: 'flower crown', number: 4, amount: '70' }]),
);

it.each(['they may want 4 crowns', 'might need 4 crowns', 'considering 4 crowns'])('%s: asked whether they are ordered', (said) => {
  const { facts, asks } = readMessage(said, some);
  expect(facts).toEqual([]);
  expect(asks.map(({ why, choices }) => [why, choices.map(({ words }) => words)])).toEqual([['ordered or not', ['order 4']]]);
});

describe('what is left to others', () => {
  it.each(['they might want 4 or 5 crowns at 70', 'might need 3 more lapels', '20 bouts might be too many'])('%s: held', (said) =>
    expect(bare(said)).toEqual([]),
  );
  it('an enquiry in an empty thread is read', () =>
    expect(bare('they might want 4 crowns at 70', context).map(({ fact }) => fact)).toEqual(['pieces', 'price']));
  it('the month is none', () => expect(bare('they want 4 crowns at 70, sat 8 may').map(({ fact }) => fact)).toContain('pieces'));
});
