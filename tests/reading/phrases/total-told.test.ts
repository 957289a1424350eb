// A total said alone is read only where pieces are ordered already: elsewhere it may be anybody's.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

const pricesOf = (text: string, pieces: readonly 'buttonhole'[]) =>
  readMessage(text, { ...context, pieces: [...pieces] })
    .facts.filter((fact) => fact.fact === 'price')
    .map(({ amount, per }) => `${amount} ${per}`);

describe('in the thread of an order', () => {
  it.each([
    ["they're paying 600 all in", ['600 all']],
    ['client is happy with 540 for the lot', ['540 all']],
    ['600 all in', ['600 all']],
    ['total is 600', ['600 all']],
    ['the total is 480 inc vat', ['480 all']],
    ['the new total is 480', []], // a change, read as one
    ['van is 600 all in', []],
    ['the arch is 600 all in', []],
    ['total is 12', []], // of pieces, more likely
    ['total is 600 people', []],
    ['we paid 600 all in', []],
  ])('%s', (text, prices) => expect(pricesOf(text, ['buttonhole'])).toEqual(prices));
});

it('is nobody’s before anything is ordered', () => expect(pricesOf("they're paying 600 all in", [])).toEqual([]));
