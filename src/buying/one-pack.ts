// What one pack costs where a price was said for several: "3 bunches for £12" is £4 a bunch. "3 for £10" comes to no price of one, and none is made up.

import type { FactOf } from '../reading/fact.ts';
import { minorUnits } from '../values/currency.ts';
import { type Decimal, decimal } from '../values/decimal.ts';

type Pack = FactOf<'pack'>;

/** How many packs the price pays for. */
export const packsPaid = ({ forAll, quantity }: Pack): number => (forAll === true ? (quantity ?? 1) : 1);

/** The price of one pack, exactly; undefined when it does not come out in whole coins. */
export const onePackPrice = (pack: Pack, price: string, currency: string): Decimal | undefined => {
  const packs = packsPaid(pack);
  if (packs === 1) return decimal(price);
  const one = decimal(price).div(packs);
  return one.decimalPlaces() > (minorUnits(currency) ?? 2) ? undefined : one;
};
