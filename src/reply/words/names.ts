// How pieces are named on screen: the studio's word for a buttonhole, singular or plural.

import type { PieceKind } from '../../handbook/pieces.ts';
import { grouped } from './counts.ts';

export type Says = 'buttonhole' | 'boutonniere';

const singular: { readonly [kind in PieceKind]: string } = {
  buttonhole: 'buttonhole',
  'wrist corsage': 'wrist corsage',
  'pin corsage': 'pin corsage',
  corsage: 'corsage',
  'flower crown': 'flower crown',
  'hair flower': 'hair flower',
  unspecified: 'piece',
};

export const pieceName = (kind: PieceKind, says: Says): string => (kind === 'buttonhole' ? says : singular[kind]);

export const plural = (kind: PieceKind, says: Says): string => `${pieceName(kind, says)}s`;

/** A choice's words with the studio's own word for a buttonhole. */
export const inOwnWord = (words: string, says: Says): string => words.replace(/\bbuttonhole(?=s?\b)/g, says);

/** "1 buttonhole", "40 buttonholes". */
export const counted = (count: number | string, kind: PieceKind, says: Says): string =>
  `${grouped(count)} ${String(count) === '1' ? pieceName(kind, says) : plural(kind, says)}`;

const conjunction = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** "buttonholes, corsages and flower crowns". */
export const listed = (names: readonly string[]): string => conjunction.format(names);
