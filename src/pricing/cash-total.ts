// What is paid in coins: the total, and only the total, rounded to the smallest coin in use. By card the exact amount stands.

import type { Decimal } from '../values/decimal.ts';
import { cashRounded } from '../values/rounding.ts';
import type { PricedOrder } from './price-order.ts';

/** The cash total where the studio has set a cash step and it changes the amount; undefined otherwise. */
export const cashTotal = ({ all, terms }: PricedOrder): Decimal | undefined => {
  if (!terms.cashStep || terms.cashStep.lessThanOrEqualTo(0)) return undefined;
  const cash = cashRounded(all.printed.price, terms.cashStep, terms.tax.cashHalf);
  return cash.equals(all.printed.price) ? undefined : cash;
};
