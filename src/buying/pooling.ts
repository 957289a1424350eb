// Needs of one item over several events, put together before they are rounded up to packs. Things that keep are bought in one go by the earliest day;
// things that don't are bought together only for the same day. What is already ordered stays apart, and what it leaves over serves the rest.

import type { Day } from '../values/day.ts';
import { type Decimal, sum, zero } from '../values/decimal.ts';
import type { Cuts } from './cutting.ts';
import type { Item } from './item.ts';
import type { BuyStatus, Need } from './needs.ts';
import { bought, type InHand, nothingInHand, type PacksBought, poolDemand, stockInHand, together, wholePacks } from './whole-packs.ts';

export interface Purchase extends PacksBought {
  readonly status: BuyStatus;
  readonly orderBy: Day | undefined;
  readonly events: readonly string[];
  readonly cuts: readonly Cuts[]; // before spares; empty for stems
}

export interface Pooled {
  readonly purchases: readonly Purchase[];
  readonly packsApart: number; // had every event bought for itself
}

const rank: Readonly<Record<BuyStatus, number>> = { received: 0, ordered: 1, 'to order': 2 };
const laterThanAll = '9999';
const byDay = (a: Day | undefined, b: Day | undefined): number => (a === b ? 0 : (a ?? laterThanAll) < (b ?? laterThanAll) ? -1 : 1);

const inPools = (needs: readonly Need[]): readonly (readonly [Need, ...Need[]])[] => {
  const pools = new Map<string, [Need, ...Need[]]>();
  for (const need of [...needs].sort((a, b) => rank[a.status] - rank[b.status] || byDay(a.orderBy, b.orderBy))) {
    const key = `${need.status} ${need.keeps ? 'keeps' : (need.orderBy ?? 'no day')}`;
    const pool = pools.get(key);
    if (pool === undefined) pools.set(key, [need]);
    else pool.push(need);
  }
  return [...pools.values()];
};

/** Every event buying for itself, what is in hand going to the earliest first. */
const apart = (item: Item, needs: readonly Need[], spare: Decimal, inHand: InHand): readonly PacksBought[] => {
  let hand = inHand;
  return needs.map(({ demand }) => {
    const one = wholePacks(item, demand, spare, hand);
    hand = one.stockAfter;
    return one;
  });
};

const added = (item: Item, each: readonly PacksBought[]): PacksBought =>
  bought(
    item,
    sum(each.map((one) => one.need)),
    packsOf(each),
    each.at(-1)?.stockAfter ?? nothingInHand,
    each.map((one) => one.boughtAfter).reduce(together, nothingInHand),
  );

const packsOf = (each: readonly PacksBought[]): number => each.reduce((total, one) => total + one.packs, 0);

/** The needs of one item (all of `item`). Never more packs than buying apart: cutting lengths has no quick best plan, so the better of both is taken. */
export const poolNeeds = (item: Item, needs: readonly Need[], spare: Decimal): Pooled => {
  const pools = inPools(needs);
  let hand = stockInHand(item);
  const purchases = pools.map((pool, at): Purchase => {
    const demand = poolDemand(pool.map((need) => need.demand));
    const each = apart(item, pool, spare, hand);
    const pooled = wholePacks(item, demand, spare, hand);
    const taken = packsOf(each) < pooled.packs ? added(item, each) : pooled;
    const servesNext = pool[0].keeps && at < pools.length - 1;
    hand = servesNext ? together(taken.stockAfter, taken.boughtAfter) : taken.stockAfter;
    const last = at === pools.length - 1;
    const own = last ? taken : bought(item, taken.need, taken.packs, nothingInHand, servesNext ? nothingInHand : taken.boughtAfter);
    return {
      ...own,
      status: pool[0].status,
      orderBy: pool[0].orderBy,
      events: pool.map((need) => need.event),
      cuts: demand.cuts,
    };
  });
  const packsApart = packsOf(apart(item, pools.flat(), spare, stockInHand(item)));
  return { purchases, packsApart: Math.max(packsApart, packsOf(purchases)) };
};

export const leftValue = (item: Item, left: Decimal): Decimal => (left.lte(zero) ? zero : left.times(item.packPrice).div(item.size));
