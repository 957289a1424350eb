// What one costs, as a fact says it.

import type { NumberRead, Token } from '../text/token.ts';
import { currencyFields } from './read-order.ts';

interface PriceEach {
  readonly amount: string;
  readonly per: 'each';
  readonly currency?: string;
  readonly symbol?: string;
}

export const priceEach = (number: NumberRead): PriceEach => ({ amount: number.amount, per: 'each', ...currencyFields(number) });

/** A line's price, where one is told. */
export const pricedEach = (token: Token | undefined): { readonly price?: PriceEach } =>
  token?.number === undefined ? {} : { price: priceEach(token.number) };

/** An amount as it was said, a range with both its ends. */
export const amountSaid = (number: NumberRead): { amount: string; amountMax?: string; currency?: string; symbol?: string } => ({
  amount: number.amount,
  ...(number.max === undefined ? {} : { amountMax: number.max }),
  ...currencyFields(number),
});
