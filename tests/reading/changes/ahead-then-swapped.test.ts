// A kind that comes in the place of another: beside those that are there already it makes more of them, and elsewhere it is all there are.

import { expect, it } from 'vitest';
import type { PieceKind } from '../../../src/handbook/pieces.ts';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

const read = (pieces: readonly PieceKind[]): object[] =>
  readMessage('the 5 pin corsages, do them as wrist ones instead', { ...context, pieces: [...pieces] }).facts.map(
    ({ words: _, ...fact }) => fact,
  );

const gone = { fact: 'change', what: 'count', to: 0, from: 5, piece: 'pin corsage' };

it('adds to those of the kind that are ordered', () => {
  expect(read(['pin corsage', 'wrist corsage'])).toEqual([{ fact: 'change', what: 'count', by: 5, piece: 'wrist corsage' }, gone]);
});

it('is all there are where none are ordered', () => {
  expect(read(['pin corsage'])).toEqual([{ fact: 'change', what: 'count', to: 5, piece: 'wrist corsage' }, gone]);
});
