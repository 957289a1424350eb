// The order a thread holds, ready to be priced. A price said as a range ("20 to 25") is priced at either end.

import type { EventState, OrderLine, OrderPrice } from '../thread/event.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import type { Order, PriceLine } from './order.ts';

export type RangeEnd = 'least' | 'most';

const amountAt = (price: { readonly amount: string; readonly amountMax?: string }, end: RangeEnd): Decimal =>
  decimal(end === 'most' ? (price.amountMax ?? price.amount) : price.amount);

const lineOf = (line: OrderLine, event: EventState, end: RangeEnd): PriceLine => {
  const material = line.material ?? event.material;
  return {
    piece: line.piece,
    count: line.count,
    ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
    ...(material === undefined ? {} : { material }),
    ...(line.price ? { price: { amount: amountAt(line.price, end), per: line.price.per } } : {}),
  };
};

const priceOf = (price: OrderPrice, end: RangeEnd): Order['price'] => ({ amount: amountAt(price, end), per: price.per });

/** The order as it stands; `end` says which end of a range of prices to take. Nothing is checked here: pricing does that. */
export const orderOf = (event: EventState, end: RangeEnd = 'least'): Order => {
  const price = event.price ? priceOf(event.price, end) : undefined;
  return {
    lines: event.lines.map((line) => lineOf(line, event, end)),
    ...(price ? { price } : {}),
  };
};

/** True when any price of the event is a range, so that both ends are worth showing. */
export const hasPriceRange = (event: EventState): boolean =>
  event.price?.amountMax !== undefined || event.lines.some((line) => line.price?.amountMax !== undefined);
