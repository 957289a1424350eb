// Margin and markup, never mixed: margin is profit as a share of the price, markup is the same profit as a share of the cost. 30 % markup is 23.1 % margin.

import { type Decimal, hundred } from '../values/decimal.ts';

/** Percent of the price that is profit. `price` is ex tax. Undefined for a price of nothing. */
export const marginOf = (price: Decimal, cost: Decimal): Decimal | undefined =>
  price.isZero() ? undefined : price.minus(cost).times(hundred).dividedBy(price);

/** Percent of the cost that is profit. Undefined for a cost of nothing. */
export const markupOf = (price: Decimal, cost: Decimal): Decimal | undefined =>
  cost.isZero() ? undefined : price.minus(cost).times(hundred).dividedBy(cost);

/** The ex-tax price at this margin: cost / (1 − margin). Undefined from 100 % up, which no price has. */
export const priceAtMargin = (cost: Decimal, margin: Decimal): Decimal | undefined =>
  margin.greaterThanOrEqualTo(hundred) ? undefined : cost.times(hundred).dividedBy(hundred.minus(margin));

/** The ex-tax price at this markup: cost × (1 + markup). */
export const priceAtMarkup = (cost: Decimal, markup: Decimal): Decimal => cost.times(hundred.plus(markup)).dividedBy(hundred);
