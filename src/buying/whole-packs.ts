// How many whole packs a need takes after stock, and what is left over. Stems and cuts are whole; needs are rounded up once, after pooling.

import { fromMetres, inMetres } from '../handbook/units.ts';
import { type Decimal, decimal, hundred, sum, zero } from '../values/decimal.ts';
import { type Cuts, cutWhole, lengthsInHand, poolCuts } from './cutting.ts';
import { type Item, packMetres, stockOf } from './item.ts';
import type { Amount } from './recipe-lines.ts';
import { wholeUp } from './whole-counts.ts';

/** What goes into the pieces, spares not yet counted. Stems may be parts of one; cuts are by length. */
export interface Demand {
  readonly stems: Decimal;
  readonly cuts: readonly Cuts[];
}

/** What is in hand before or after: stems, or lengths in metres. */
export interface InHand {
  readonly stems: Decimal;
  readonly lengths: readonly Decimal[];
}

/** All figures in the item's own unit. */
export interface PacksBought {
  readonly need: Decimal; // with spares, in whole stems or whole cuts
  readonly packs: number;
  readonly left: Decimal; // usable: stems, or the longest end of a spool; less than a pack whenever one was bought
  readonly offcuts: Decimal; // shorter ends of spools; always 0 for stems
  readonly stockAfter: InHand; // of what was in hand
  readonly boughtAfter: InHand; // of the packs
}

export const nothingInHand: InHand = { stems: zero, lengths: [] };

export const together = (a: InHand, b: InHand): InHand => ({ stems: a.stems.plus(b.stems), lengths: [...a.lengths, ...b.lengths] });

export const demandOf = (pieces: number, amount: Amount): Demand => {
  if (amount.kind === 'cut') return { stems: zero, cuts: [{ metres: amount.metres, count: decimal(pieces) }] };
  return { stems: amount.kind === 'stems' ? amount.stems.times(pieces) : zero, cuts: [] };
};

export const poolDemand = (demands: readonly Demand[]): Demand => ({
  stems: sum(demands.map((demand) => demand.stems)),
  cuts: poolCuts(demands.map((demand) => demand.cuts)),
});

export const stockInHand = (item: Item): InHand => {
  const spool = packMetres(item);
  if (spool === undefined || item.unit.measure !== 'length') return { stems: stockOf(item), lengths: [] };
  return { stems: zero, lengths: lengthsInHand(inMetres(stockOf(item), item.unit.name), spool) };
};

/** The figures of a purchase from what remains of stock and packs. */
export const bought = (item: Item, need: Decimal, packs: number, stockAfter: InHand, boughtAfter: InHand): PacksBought => {
  const { unit } = item;
  if (unit.measure !== 'length') {
    return { need, packs, left: stockAfter.stems.plus(boughtAfter.stems), offcuts: zero, stockAfter, boughtAfter };
  }
  const all = sum([...stockAfter.lengths, ...boughtAfter.lengths]);
  const left = packs > 0 ? boughtAfter.lengths.reduce((longest, end) => (end.gt(longest) ? end : longest), zero) : all;
  return { need, packs, left: fromMetres(left, unit.name), offcuts: fromMetres(all.minus(left), unit.name), stockAfter, boughtAfter };
};

/** `spare` in percent. */
export const wholePacks = (item: Item, demand: Demand, spare: Decimal, inHand: InHand): PacksBought => {
  const withSpare = (count: Decimal) => wholeUp(count.times(hundred.plus(spare)).div(hundred));
  const spool = packMetres(item);
  if (spool !== undefined && item.unit.measure === 'length') {
    const cuts = demand.cuts.map((cut) => ({ metres: cut.metres, count: withSpare(cut.count) }));
    const plan = cutWhole(spool, cuts, inHand.lengths);
    const need = fromMetres(sum(cuts.map((cut) => cut.metres.times(cut.count))), item.unit.name);
    return bought(item, need, plan.spools, { stems: zero, lengths: plan.inHand }, { stems: zero, lengths: plan.ends });
  }
  const need = withSpare(demand.stems);
  const short = need.minus(inHand.stems);
  const packs = short.gt(zero) ? wholeUp(short.div(item.size)).toNumber() : 0;
  const left = inHand.stems.plus(item.size.times(packs)).minus(need);
  const rest: InHand = { stems: left, lengths: [] };
  return packs > 0 ? bought(item, need, packs, nothingInHand, rest) : bought(item, need, 0, rest, nothingInHand);
};
