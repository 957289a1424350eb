// Which kind of the order a word means: "corsages" are the wrist corsages where those are the only ones.

import type { PieceKind } from '../handbook/pieces.ts';
import type { OrderLine } from './event.ts';

const corsages: ReadonlySet<PieceKind> = new Set<PieceKind>(['corsage', 'wrist corsage', 'pin corsage']);

/** The kind itself where the order holds it or nothing like it; else the one kind of its family that it holds. */
export const kindInOrder = (lines: readonly OrderLine[], piece: PieceKind): PieceKind => {
  if (lines.some((line) => line.piece === piece) || !corsages.has(piece)) return piece;
  const alike = [...new Set(lines.flatMap((line) => (corsages.has(line.piece) ? [line.piece] : [])))];
  // A pin corsage is no wrist corsage: only the word for both may stand for either.
  const [only, second] = alike.filter((kind) => kind === 'corsage' || piece === 'corsage');
  return only !== undefined && second === undefined ? only : piece;
};

/** Whether the order holds other kinds, and none of this one. */
export const isMissing = (lines: readonly OrderLine[], piece: PieceKind): boolean =>
  piece !== 'unspecified' && lines.length > 0 && !lines.some((line) => line.piece === piece || line.piece === 'unspecified');
