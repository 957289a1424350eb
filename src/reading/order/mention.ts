// A wearable piece named in a message, and where its number stands.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Token } from '../text/token.ts';

export interface Mention {
  readonly index: number; // the piece word
  readonly last: number; // its last token ("lapel pices" is two)
  readonly start: number; // from its count on
  readonly end: number;
  readonly kind: PieceKind;
  readonly count?: Token; // its number token
  readonly exact?: number; // "a crown" 1, "both corsages" 2
  readonly countIndex?: number;
  readonly apart?: true; // its count stands elsewhere in the message
  readonly priceIndex?: number; // a number behind it that prices it
  readonly material?: string;
  readonly materialIndex?: number;
  readonly wearer?: string;
}
