// "Lapels for the boys and a couple of corsages": a kind named beside what was ordered, and nobody said how many. That is asked before any price.

import type { PieceKind } from '../../handbook/pieces.ts';
import { openMessage } from '../../reading/text/message.ts';
import type { Answer } from '../answer.ts';
import { unheard } from './cautions.ts';

/** The one kind, in the plural, that words nobody read name without a number. */
export const kindNamed = (unread: readonly string[]): PieceKind | undefined => {
  const [words, another] = unread;
  if (words === undefined || another !== undefined || !/s$/.test(words)) return undefined;
  const { tokens } = openMessage(words);
  const [kind, second] = tokens.flatMap(({ means }) => means['piece'] ?? []);
  if (kind === undefined || second !== undefined || kind === 'unspecified' || tokens.some(({ number }) => number !== undefined))
    return undefined;
  return kind as PieceKind;
};

/** In a thread without an order: the kind that is wanted, in words nobody read or with what it is made of ("dried buttonholes"). */
export const kindWithoutOrder = ({ event, unread, stated }: Answer): PieceKind | undefined => {
  if (event.lines.length > 0) return undefined;
  const [made, another] = stated.flatMap((fact) => (fact.fact === 'material' ? (fact.piece ?? []) : []));
  return kindNamed(unread) ?? (unread.length > 0 || another !== undefined || made === 'unspecified' ? undefined : made);
};

/** The one kind that was said without a number and is not in the order. */
export const uncountedKind = (answer: Answer): PieceKind | undefined => {
  if (!answer.stated.some(({ fact }) => fact === 'pieces')) return undefined;
  const piece = kindNamed(unheard(answer));
  // "bouts for the lads": of one alone, "the comb", nothing is missing.
  return answer.event.lines.some((line) => line.piece === piece) ? undefined : piece;
};
