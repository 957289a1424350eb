// The kind of piece a word names, as a fact says it. "Pieces" alone are of no kind.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Token } from './token.ts';

/** The field of a fact; none for no particular kind. */
export const ofKind = (kind: string | undefined): { piece?: PieceKind } =>
  kind === undefined || kind === 'unspecified' ? {} : { piece: kind as PieceKind };

export const kindOf = (token: Token | undefined): { piece?: PieceKind } => ofKind(token?.means['piece']);

export const kindNamed = (token: Token | undefined): PieceKind | undefined => kindOf(token).piece;
