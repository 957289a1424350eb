// Prices of kinds that are named and not counted: "crowns are 140 each", "bouts $14, corsages $30", "$12 per bout".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact, FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { priceFact } from './read-order.ts';

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

// "wrist corsages R95, pin corsages R80, 6 of each"
const soManyEach = pattern('<n:count> (of)? (each|both|each of them|each kind)');

/** What such prices state: prices of their kinds, or lines of the order where so many of each are wanted. */
export const ofKinds = (reader: Reader, kinds: readonly PricedKind[]): Finding => {
  const many = soManyEach.in(reader.tokens, 0, reader.tokens.length);
  const count = kinds.length > 1 && many !== undefined && reader.free(many.start) ? many.kept['n'] : undefined;
  const facts = kinds.map(({ price, piece, from, to }) => {
    const words = reader.words(Math.min(from, price.start), Math.max(to, price.end));
    const { fact: _, kind: _kind, per: _per, ...amounts } = priceFact(price, 'each', false) as FactOf<'price'>;
    return count === undefined
      ? { ...priceFact(price, 'each', false), piece, words }
      : { fact: 'pieces', piece, count: Number(count.number?.amount), price: { ...amounts, per: 'each' }, words };
  }) as Fact[];
  const tokens = new Set(kinds.flatMap(({ price }) => Array.from({ length: price.end - price.start }, (_, at) => price.start + at)));
  if (count !== undefined && many !== undefined) for (let index = many.start; index < many.end; index++) tokens.add(index);
  for (const { from, to } of kinds) for (let index = from; index < to; index++) tokens.add(index);
  const sorted = [...tokens].sort((a, b) => a - b);
  const [first = 0] = sorted;
  return { start: first, end: (sorted.at(-1) ?? first) + 1, takes: sorted, facts };
};
