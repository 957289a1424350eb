// What the whole order comes to now, as decimal text; undefined where a line has no price of its own or only the least it could be.

import { decimal, sum } from '../values/decimal.ts';
import type { EventState } from './event.ts';

export const totalNow = ({ lines, price }: EventState): string | undefined => {
  if (price?.per === 'all') return price.amount;
  if (lines.length === 0) return undefined;
  const parts = lines.map(({ count, countMax, price: own }) => {
    const each = own ?? price;
    if (each === undefined || each.amountMax !== undefined || countMax !== undefined) return undefined;
    return decimal(each.amount).times(each.per === 'line' ? 1 : count);
  });
  const known = parts.filter((part) => part !== undefined);
  return known.length === parts.length ? sum(known).toString() : undefined;
};
