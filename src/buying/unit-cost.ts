// What one stem or one cut costs. A length is paid for by whole cuts: the end of the spool too short for another cut was paid for as well.

import { type Decimal, decimal } from '../values/decimal.ts';
import { roundTo } from '../values/rounding.ts';
import { type Item, packMetres } from './item.ts';
import type { Amount } from './recipe-lines.ts';
import { wholeDown } from './whole-counts.ts';

/** Whole cuts of this many metres in one spool: 8 yd at 30 cm is 24, not 24.4. */
export const cutsInPack = (metresInPack: Decimal, metresOfCut: Decimal): Decimal => wholeDown(metresInPack.div(metresOfCut));

/** Pack price over pack size, exactly (forty digits). */
export const unitCost = (packPrice: Decimal, size: Decimal): Decimal => packPrice.div(size);

/** The unit cost people see, always up to the coin: rounded down it would promise stems the pack doesn't pay for. */
export const unitCostShown = (exact: Decimal, coinDigits: number): Decimal => roundTo(exact, coinDigits, 'up');

export interface LineCost {
  readonly unit: Decimal; // one stem, or one cut
  readonly each: Decimal; // all this line puts in one piece
  readonly cutsInPack?: Decimal;
}

/** The cost of one recipe line in one piece, spares not counted. Price times stems before dividing by the pack. */
export const lineCost = (item: Item, amount: Amount): LineCost => {
  const spool = packMetres(item);
  if (amount.kind === 'cut' && spool !== undefined) {
    const cuts = cutsInPack(spool, amount.metres);
    const one = unitCost(item.packPrice, cuts);
    return { unit: one, each: one, cutsInPack: cuts };
  }
  const count = amount.kind === 'stems' ? amount.stems : decimal(1);
  return { unit: unitCost(item.packPrice, item.size), each: item.packPrice.times(count).div(item.size) };
};
