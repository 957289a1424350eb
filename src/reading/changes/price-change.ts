// A new price as a change: for each or for all, and what it was.

import type { Price } from '../order/price-at.ts';
import type { Unworded } from '../phrase.ts';

const perOf = (price: Price, negated: { each: boolean; all: boolean }): 'each' | 'all' | undefined =>
  price.per === 'unsaid' ? (price.at ? 'each' : negated.all ? 'each' : negated.each ? 'all' : undefined) : price.per;

export const priceChange = (
  price: Price,
  negated: { each: boolean; all: boolean },
  from: { amount: string } | undefined,
  rising: boolean,
): Unworded => {
  const per = perOf(price, negated);
  const { amount, max, or } = price.number;
  const span = rising && or === undefined ? max : undefined;
  const to = span ?? amount;
  const was = span === undefined ? from?.amount : amount;
  return {
    fact: 'change',
    what: 'price',
    to,
    ...(was === undefined ? {} : { from: was }),
    ...(per === undefined ? {} : { per }),
    ...(price.number.currency === undefined ? {} : { currency: price.number.currency }),
    ...(price.number.symbol === undefined ? {} : { symbol: price.number.symbol }),
    ...(price.piece === undefined ? {} : { piece: price.piece }),
  };
};
