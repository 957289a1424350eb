// Every way an order or its terms can be wrong as money, found before anything is computed.

import { type Decimal, decimal } from '../values/decimal.ts';
import { isWholeCoins, smallestCoin } from '../values/money.ts';
import type { Problem } from '../values/problem.ts';
import { problem } from '../values/result.ts';
import type { Labour } from './labour-share.ts';
import type { Order, QuotedPrice } from './order.ts';

const mostPieces = 100_000;
const mostMoney = decimal('1e12');

/** What is wrong with one amount of money a person gave. */
export const amountProblem = (amount: Decimal, currency: string): Problem | undefined => {
  const shown = amount.toString();
  if (!amount.isFinite() || amount.greaterThan(mostMoney)) return problem('price-too-large', { amount: shown });
  if (amount.lessThanOrEqualTo(0)) return problem('price-not-positive', { amount: shown });
  const coin = smallestCoin(currency);
  const smallest = coin.toString();
  if (amount.lessThan(coin)) return problem('price-below-smallest-coin', { amount: shown, smallest });
  return isWholeCoins(amount, currency) ? undefined : problem('price-finer-than-coin', { amount: shown, smallest });
};

const priceProblem = (price: QuotedPrice<string> | undefined, currency: string): Problem | undefined => {
  if (!price) return undefined;
  if (price.currency !== undefined && price.currency !== currency) {
    return problem('other-currency', { said: price.currency, studio: currency });
  }
  return amountProblem(price.amount, currency);
};

const countProblem = (count: number): Problem | undefined => {
  if (count > mostPieces) return problem('count-too-large', { count: String(count), most: mostPieces });
  return Number.isInteger(count) && count > 0 ? undefined : problem('count-not-positive', { words: String(count) });
};

/** The first thing wrong with the order itself. */
export const orderProblem = (order: Order, currency: string): Problem | undefined => {
  if (order.lines.length === 0) return problem('nothing-to-price', {});
  for (const line of order.lines) {
    const wrong = countProblem(line.count) ?? priceProblem(line.price, currency);
    if (wrong) return wrong;
  }
  return priceProblem(order.price, currency);
};

/** Labour must leave some product: below 100 % out of the price; on product any share a person could mean. */
export const labourProblem = ({ rule, share }: Labour): Problem | undefined => {
  const most = rule === 'out of the price' ? 100 : 1000;
  const fits = share.isFinite() && !share.isNegative() && share.lessThan(most);
  return fits ? undefined : problem('rate-out-of-range', { what: 'labour', rate: share.toString() });
};

export const taxProblem = (rate: Decimal): Problem | undefined =>
  rate.isFinite() && !rate.isNegative() && rate.lessThan(100)
    ? undefined
    : problem('rate-out-of-range', { what: 'tax', rate: rate.toString() });

/** A multiple a person could mean: from a hundredth to a thousand. */
export const multipleProblem = (what: 'stems' | 'sundries', multiple: Decimal): Problem | undefined => {
  if (multiple.isNaN() || multiple.lessThan('0.01')) return problem('multiple-not-positive', { what, multiple: multiple.toString() });
  return multiple.greaterThan(1000) ? problem('rule-not-understood', { what: `${what} multiple`, to: multiple.toString() }) : undefined;
};

/** What one piece's sundries cost: nothing or more, finer than a coin if need be. */
export const sundriesProblem = (sundries: Decimal): Problem | undefined => {
  const amount = sundries.toString();
  if (!sundries.isFinite() || sundries.greaterThan(mostMoney)) return problem('price-too-large', { amount });
  return sundries.isNegative() ? problem('price-not-positive', { amount }) : undefined;
};
