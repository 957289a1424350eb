// "30 at the same price each" of an order with one price for all: what each came to stays.

import { decimal } from '../values/decimal.ts';
import type { EventState } from './event.ts';

/** One price for all of a kind, told for so many, as the price each it comes to; left alone where it does not come out in coins. */
export const inPriceEach = (state: EventState): EventState => {
  const [line, another] = state.lines;
  if (line === undefined || another !== undefined || line.price !== undefined || state.price?.per !== 'all') return state;
  const { price, ...rest } = state;
  const each = decimal(price.amount).dividedBy(line.count);
  if (price.amountMax !== undefined || each.decimalPlaces() > 2) return state;
  return { ...rest, lines: [{ ...line, price: { amount: each.toString(), per: 'each' } }] };
};
