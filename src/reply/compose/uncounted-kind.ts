// "Lapels for the boys and a couple of corsages": a kind named beside what was ordered, and nobody said how many. That is asked before any price.

import type { PieceKind } from '../../handbook/pieces.ts';
import { openMessage } from '../../reading/text/message.ts';
import type { Answer } from '../answer.ts';
import { unheard } from './cautions.ts';

/** The one kind that was said without a number and is not in the order. */
export const uncountedKind = (answer: Answer): PieceKind | undefined => {
  if (!answer.stated.some(({ fact }) => fact === 'pieces')) return undefined;
  const [words, another] = unheard(answer);
  if (words === undefined || another !== undefined) return undefined;
  const { tokens } = openMessage(words);
  const [kind, second] = tokens.flatMap(({ means }) => means['piece'] ?? []);
  if (kind === undefined || second !== undefined || kind === 'unspecified' || tokens.some(({ number }) => number !== undefined))
    return undefined;
  const piece = kind as PieceKind;
  // "bouts for the lads": of one alone, "the comb", nothing is missing.
  return answer.event.lines.some((line) => line.piece === piece) || !/s$/.test(words) ? undefined : piece;
};
