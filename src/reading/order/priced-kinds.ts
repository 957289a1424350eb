// Prices of kinds that are named and not counted: "crowns are 140 each", "bouts $14, corsages $30", "$12 per bout".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact, FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { priceFact } from './read-order.ts';

export interface PricedKind {
  readonly price: Price;
  readonly piece: PieceKind;
  readonly from: number; // first token of the name
  readonly to: number; // one past its last
}

// "£15 bouts, £26 corsages", "£16 max for the lapels, £30 for the corsages": each price stands before its kind.
const kindsBehind = (mentions: readonly Mention[], prices: readonly Price[]): readonly PricedKind[] | undefined => {
  if (prices.length < 2 || prices.length !== mentions.length) return undefined;
  const kinds = prices.flatMap((price, at): PricedKind[] => {
    const mention = mentions[at];
    const own = mention !== undefined && price.pieceIndex === mention.index && price.index < mention.index;
    return own && price.per !== 'all' && price.forCount !== true
      ? [{ price, piece: mention.kind, from: mention.index, to: mention.last + 1 }]
      : [];
  });
  return kinds.length === prices.length ? kinds : undefined;
};

/**
 * The price behind each kind's name and before the next; a kind without one beside others stays unread. Undefined where anything is counted, or a price
 * has no kind of its own.
 */
export const pricedKinds = (mentions: readonly Mention[], prices: readonly Price[]): readonly PricedKind[] | undefined => {
  if (prices.length === 0 || prices.length > mentions.length) return undefined;
  if (mentions.some((mention) => mention.countIndex !== undefined || mention.kind === 'unspecified')) return undefined;
  // "18 each for bouts, 42 each for corsages": each price names its own; "15 the bout" may say anything.
  const own = prices.flatMap((price): PricedKind[] => {
    const mention = mentions.find(({ index }) => index === price.pieceIndex && index > price.index);
    return mention === undefined || price.per !== 'each' || (mention.index < price.end && price.number.form !== 'money')
      ? []
      : [{ price, piece: mention.kind, from: mention.index, to: mention.last + 1 }];
  });
  if (own.length === prices.length && own.length === mentions.length && new Set(own.map(({ from }) => from)).size === own.length)
    return own;
  const ahead = kindsBehind(mentions, prices);
  if (ahead !== undefined) return ahead;
  const kinds = mentions.flatMap((mention, at): PricedKind[] => {
    const next = mentions[at + 1];
    const [price, second] = prices.filter((each) => each.index > mention.last && (next === undefined || each.index < next.index));
    const plain = price !== undefined && second === undefined && price.per !== 'all' && price.forCount !== true;
    return plain ? [{ price, piece: mention.kind, from: mention.index, to: mention.last + 1 }] : [];
  });
  // "corsages and bouts at 14": for both.
  const each = kinds.length === mentions.length || kinds[0]?.from === mentions[0]?.index;
  return kinds.length === prices.length && each ? kinds : undefined;
};

// "wrist corsages R95, pin corsages R80, 6 of each"
const soManyEach = pattern('<n:count> (of)? (each|both|each of them|each kind)');

// A number that is one of the prices counts nothing: "bouts 16 each, corsages 30 each".
const manyOfEach = ({ tokens, free }: Reader, kinds: readonly PricedKind[]): Match | undefined => {
  for (let index = 0; index < tokens.length; index++) {
    const match = soManyEach.at(tokens, index, tokens.length);
    if (match !== undefined && free(index) && !kinds.some(({ price }) => price.index === index)) return match;
  }
  return undefined;
};

/** What such prices state: prices of their kinds, or lines of the order where so many of each are wanted. */
export const ofKinds = (reader: Reader, kinds: readonly PricedKind[]): Finding => {
  const many = manyOfEach(reader, kinds);
  const count = kinds.length > 1 ? many?.kept['n'] : undefined;
  const facts = kinds.map(({ price, piece, from, to }) => {
    const words = reader.words(Math.min(from, price.start), Math.max(to, price.end));
    const { fact: _, kind: _kind, per: _per, ...amounts } = priceFact(price, 'each', false) as FactOf<'price'>;
    return count === undefined
      ? { ...priceFact(price, 'each', false), piece, words }
      : { fact: 'pieces', piece, count: Number(count.number?.amount), price: { ...amounts, per: 'each' }, words };
  }) as Fact[];
  const tokens = new Set(kinds.flatMap(({ price }) => [...placesIn(price), ...(price.told ?? [])]));
  if (count !== undefined && many !== undefined) for (let index = many.start; index < many.end; index++) tokens.add(index);
  for (const { from, to } of kinds) for (let index = from; index < to; index++) tokens.add(index);
  const sorted = [...tokens].sort((a, b) => a - b);
  const [first = 0] = sorted;
  return { start: first, end: (sorted.at(-1) ?? first) + 1, takes: sorted, facts };
};
