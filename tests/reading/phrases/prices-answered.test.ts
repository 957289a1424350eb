// "At what price each?" and the short ways people answer it. The same words outside that question set no price.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import type { ReadingContext } from '../../../src/reading/reading.ts';
import { context } from '../support/context.ts';

const asked: ReadingContext = { ...context, pieces: ['buttonhole', 'wrist corsage'], open: { kind: 'missing', about: 'price' } };
const prices = (said: string, within: ReadingContext = asked) =>
  readMessage(said, within).facts.flatMap((fact) =>
    fact.fact === 'price' ? [`${fact.piece ?? fact.per} ${fact.amount}${fact.amountMax === undefined ? '' : ` to ${fact.amountMax}`}`] : [],
  );

describe('a price for every kind', () => {
  it.each([
    ['16', ['each 16']],
    ['16 inc', ['each 16']],
    ['16 inc vat', ['each 16']],
    ['16 + vat', ['each 16']],
    ['say 16.50 before tax', ['each 16.5']],
    ['we charge 16', ['each 16']],
    ['16-18', ['each 16 to 18']],
    ['16 inc, event 14 march', ['each 16']],
  ])('%s', (said, expected) => expect(prices(said)).toEqual(expected));
});

describe('a price by kind', () => {
  it.each([
    ['bouts 16 corsages 34 inc vat', ['buttonhole 16', 'corsage 34']],
    ['bouts 16, corsages 34', ['buttonhole 16', 'corsage 34']],
    ['16 for bouts, 34 for the corsages', ['buttonhole 16', 'corsage 34']],
    ['16 a bout and 34 a corsage plus vat', ['buttonhole 16', 'corsage 34']],
    ['16 the bouts 34 the corsages', ['buttonhole 16', 'corsage 34']],
    ['i charge 16 for bouts n 34 for corsages inc', ['buttonhole 16', 'corsage 34']],
    ['corsages 36 now', ['corsage 36']],
    ['bouts sixteen', ['buttonhole 16']],
  ])('%s', (said, expected) => expect(prices(said)).toEqual(expected));
});

it('keeps what stands beside the price: the tax and the material', () => {
  const { facts } = readMessage('25 each inc, fresh', asked);
  expect(facts.map(({ fact }) => fact).sort()).toEqual(['material', 'price', 'tax']);
});

it('asks whose is which of two prices without their kinds', () => {
  const [ask] = readMessage('16 and 34', asked).asks;
  expect(ask?.choices.map(({ words }) => words)).toEqual(['buttonhole 16, wrist corsage 34', 'wrist corsage 16, buttonhole 34']);
  expect(prices('16 and 34')).toEqual([]);
});

describe('numbers of something else', () => {
  it.each(['40 corsages', 'made 12 bouts', '14 march', 'lunch at 1', 'jo has 16', 'it was 16 last time', 'bouts 16, made 12 bouts today'])(
    '%s',
    (said) => expect(prices(said)).toEqual([]),
  );
});

it.each(['16 inc vat', 'corsages 34', '16 and 34', '16 for bouts, 34 for corsages'])('“%s” means nothing while nothing is asked', (said) =>
  expect(prices(said, { ...asked, open: undefined })).toEqual([]),
);
