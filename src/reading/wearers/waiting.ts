// Wearers whose number stands behind what they wear: "2 mums corsages, nans pin-ons (3 nans)".

import type { PieceKind } from '../../handbook/pieces.ts';
import { isCount, type Token } from '../text/token.ts';
import { nameOf } from './role-counts.ts';
import type { Entry } from './wearers-read.ts';

export interface Waiting {
  readonly role: string;
  readonly piece: PieceKind | undefined;
  readonly end: number;
}

/** Gives those counted later the kind said of them before; how many are still counted by nobody. */
export const leftWaiting = (waiting: readonly Waiting[], entries: readonly Entry[]): number =>
  waiting.filter(({ role, piece }) => {
    const counted = entries.find(
      (each) => each.wearer === nameOf(role, each.count) && (piece === undefined || (each.piece ?? piece) === piece),
    );
    if (counted !== undefined && piece !== undefined && piece !== 'unspecified') counted.piece ??= piece;
    return counted === undefined;
  }).length;

const isCounted = (tokens: readonly Token[], end: number): boolean =>
  isCount(tokens[end]) || (/^(x|\(|:|-|=)$/.test(tokens[end]?.text ?? '') && isCount(tokens[end + 1]));

/** Whether several of a kind are meant and nobody says how many: "nans pin-ons", but not "grooms buttonhole" or "nans pin-ons x3". */
export const waitsForCount = (tokens: readonly Token[], { piece, end }: Waiting): boolean =>
  piece !== undefined && /s$/.test(tokens[end - 1]?.text ?? '') && !isCounted(tokens, end);
