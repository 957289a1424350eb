// Margin and markup, never mixed: margin is profit as a share of the price, markup is the same profit as a share of the cost. 30 % markup is 23.1 % margin.

import { type Decimal, hundred } from '../values/decimal.ts';

/** Percent of the price that is profit. `price` is ex tax. Undefined for a price of nothing. */
export const marginOf = (price: Decimal, cost: Decimal): Decimal | undefined =>
  price.isZero() ? undefined : price.minus(cost).times(hundred).dividedBy(price);

/** Percent of the cost that is profit. Undefined for a cost of nothing. */
export const markupOf = (price: Decimal, cost: Decimal): Decimal | undefined =>
  cost.isZero() ? undefined : price.minus(cost).times(hundred).dividedBy(cost);
