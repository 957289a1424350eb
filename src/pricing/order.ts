// What is to be priced: lines of pieces, some with a price of their own, and perhaps one price for all. Amounts are exact and in the studio's currency.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Decimal } from '../values/decimal.ts';

/** An amount as quoted: including tax or before it, by the tax basis of the terms. */
export interface QuotedPrice<Per extends string> {
  readonly amount: Decimal;
  readonly per: Per;
  readonly currency?: string; // ISO 4217, where the words fixed it
}

export interface PriceLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly wearer?: string;
  readonly material?: Material;
  readonly price?: QuotedPrice<'each' | 'line'>; // 'line': for all of this line's pieces together
}

export interface Order {
  readonly lines: readonly PriceLine[];
  readonly price?: QuotedPrice<'each' | 'all'>; // for the lines without a price of their own
}
