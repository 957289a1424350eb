// Whether any piece is named at all in a message: many forms hold only where none is.

import { pattern } from './pattern.ts';
import type { Token } from './text/token.ts';

const piece = pattern('<piece>');

export const namesPieces = (tokens: readonly Token[]): boolean => piece.might(tokens);

/** The first token from `from` on that names a piece; the length of the message when there is none. */
export const nextPiece = (tokens: readonly Token[], from: number): number => piece.next(tokens, from, tokens.length);
