// Lengths cut whole from spools and from what is in hand. Longest cuts first, each from the first length it fits; where that takes more spools than
// cutting every length from spools of its own, the plainer way is taken.

import { type Decimal, decimal, zero } from '../values/decimal.ts';
import { wholeDown } from './whole-counts.ts';

export interface Cuts {
  readonly metres: Decimal; // of one cut; not longer than a spool
  readonly count: Decimal; // whole
}

export interface CutPlan {
  readonly spools: number;
  readonly ends: readonly Decimal[]; // metres left on each new spool
  readonly inHand: readonly Decimal[]; // metres left of each length that was in hand
}

/** Stock of a length as the pieces it can be: whole spools, and the rest as one length. */
export const lengthsInHand = (stock: Decimal, spool: Decimal): readonly Decimal[] => {
  const whole = wholeDown(stock.div(spool)).toNumber();
  const rest = stock.minus(spool.times(whole));
  return [...Array.from({ length: whole }, () => spool), ...(rest.gt(zero) ? [rest] : [])];
};

const cutFrom = (lengths: Decimal[], cut: Decimal, wanted: Decimal): Decimal => {
  let still = wanted;
  for (const [at, length] of lengths.entries()) {
    if (still.lte(zero)) break;
    const fits = wholeDown(length.div(cut));
    const taken = fits.lt(still) ? fits : still;
    lengths[at] = length.minus(cut.times(taken));
    still = still.minus(taken);
  }
  return still;
};

const cutAll = (spool: Decimal, cuts: readonly Cuts[], inHand: readonly Decimal[], shareSpools: boolean): CutPlan => {
  const hand = [...inHand];
  const ends: Decimal[] = [];
  for (const { metres, count } of [...cuts].sort((a, b) => b.metres.cmp(a.metres))) {
    let still = cutFrom(hand, metres, count);
    if (shareSpools) still = cutFrom(ends, metres, still);
    const perSpool = wholeDown(spool.div(metres));
    while (still.gt(zero)) {
      const taken = perSpool.lt(still) ? perSpool : still;
      ends.push(spool.minus(metres.times(taken)));
      still = still.minus(taken);
    }
  }
  return { spools: ends.length, ends, inHand: hand };
};

/** The spools these cuts need after what is in hand. Exact for one length of cut; for several, never more than each length on its own spools. */
export const cutWhole = (spool: Decimal, cuts: readonly Cuts[], inHand: readonly Decimal[]): CutPlan => {
  const shared = cutAll(spool, cuts, inHand, true);
  if (cuts.length < 2) return shared;
  const apart = cutAll(spool, cuts, inHand, false);
  return apart.spools < shared.spools ? apart : shared;
};

/** The same cuts of several lists, added up by length. */
export const poolCuts = (lists: readonly (readonly Cuts[])[]): readonly Cuts[] => {
  const byLength = new Map<string, Cuts>();
  for (const { metres, count } of lists.flat()) {
    const before = byLength.get(metres.toString())?.count ?? decimal(0);
    byLength.set(metres.toString(), { metres, count: before.plus(count) });
  }
  return [...byLength.values()];
};
