// Prices of kinds that are named beside an order and not counted in it: "crowns 90 each. 12 bouts" prices no bout.

import type { Fact } from '../fact.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { priceFact } from './read-order.ts';

const alike = (one: string, other: string): boolean => one.includes(other) || other.includes(one);

/** Each such price, with what it states. */
export const pricesOfOthers = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): { price: Price; fact: Fact }[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  if (lines.length === 0) return [];
  return prices.flatMap((price) => {
    const before = /^(is|are|=|:|-|cost|for)$/.test(reader.tokens[price.start - 1]?.text ?? '') ? price.start - 2 : price.start - 1;
    const own = mentions.find((mention) => mention.countIndex === undefined && mention.last === before && mention.kind !== 'unspecified');
    // "bouts $15 each x 12" counts them after all.
    if (reader.tokens[price.end]?.text === 'x') return [];
    // "10 bouts and corsages at 30"
    const each = price.per === 'each' || (price.per === 'unsaid' && (price.at || price.kind === 'from'));
    if (own === undefined || !each || price.piece !== undefined || lines.some(({ kind }) => alike(kind, own.kind))) return [];
    const words = reader.words(own.index, price.end);
    return [{ price: { ...price, pieceIndex: own.index }, fact: { ...priceFact(price, 'each', false), piece: own.kind, words } as Fact }];
  });
};
