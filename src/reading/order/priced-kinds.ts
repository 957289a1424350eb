// Prices of kinds that are named and not counted: "crowns are 140 each", "bouts $14, corsages $30", "$12 per bout".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

export interface PricedKind {
  readonly price: Price;
  readonly piece: PieceKind;
  readonly from: number; // first token of the name
  readonly to: number; // one past its last
}

/** One price for each kind, each behind its name and before the next; undefined where anything is counted or it is not so plain. */
export const pricedKinds = (mentions: readonly Mention[], prices: readonly Price[]): readonly PricedKind[] | undefined => {
  if (mentions.length === 0 || mentions.length !== prices.length) return undefined;
  const kinds = mentions.flatMap((mention, at): PricedKind[] => {
    const price = prices[at];
    const next = mentions[at + 1];
    const plain =
      price !== undefined &&
      price.per !== 'all' &&
      price.forCount !== true &&
      mention.countIndex === undefined &&
      mention.kind !== 'unspecified' &&
      price.index > mention.last &&
      (next === undefined || price.index < next.index);
    return plain ? [{ price, piece: mention.kind, from: mention.index, to: mention.last + 1 }] : [];
  });
  return kinds.length === mentions.length ? kinds : undefined;
};
