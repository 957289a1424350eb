// A price said with a most or a least, which a change could not keep: "16 corsages now, and no more than 30 each". It is read as part of an order.

import type { Price } from '../order/price-at.ts';
import { findPrices } from '../order/prices.ts';
import { priceFact } from '../order/read-order.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// "up to 14" and "from 14" may tell which way a price goes.
const moves = /^(up to|upto|from|down to)$/;

const bounded = (reader: Reader, part: Part): readonly Price[] =>
  findPrices(reader, new Set(), new Set(), part).filter(({ start, end }) =>
    reader.tokens.slice(start, end).some(({ text, means }) => (means['upTo'] ?? means['from']) !== undefined && !moves.test(text)),
  );

export const boundedPrice = (reader: Reader, part: Part): boolean => bounded(reader, part).length > 0;

/** "16 corsages now not 12, max 30 each": beside a new count of one kind, the price with its most. */
export const withBound = (reader: Reader, part: Part, facts: readonly Unworded[]): Unworded[] => {
  const [price, another] = bounded(reader, part);
  const counted = facts.flatMap((fact) => (fact.fact === 'change' && fact.what === 'count' ? [fact.piece] : []));
  if (price?.kind === undefined || another !== undefined || counted.length !== 1) return [...facts];
  const piece = counted[0];
  return facts.map((fact) =>
    fact.fact === 'change' && fact.what === 'price' && fact.to === price.number.amount && fact.per === 'each'
      ? ({ ...priceFact(price, 'each', false), ...(piece === undefined ? {} : { piece }) } as Unworded)
      : fact,
  );
};
