// What to buy, from whom, by when: one row an item, whole packs, pooled over events, grouped by supplier and order-by day.

import type { Day } from '../values/day.ts';
import { type Decimal, sum, zero } from '../values/decimal.ts';
import type { Cuts } from './cutting.ts';
import type { Item } from './item.ts';
import { type BuyStatus, type EventToBuy, type Need, needsOf, type OrderDay } from './needs.ts';
import { leftValue, poolNeeds } from './pooling.ts';
import type { MissingPrice } from './priced-lines.ts';
import { spareOf } from './recipe-cost.ts';

/** Quantities in the item's own unit, money in the studio's currency; all exact. */
export interface BuyRow {
  readonly item: Item;
  readonly status: BuyStatus;
  readonly orderBy: Day | undefined;
  readonly events: readonly string[];
  readonly need: Decimal; // with spares, rounded up to whole stems or cuts
  readonly cuts: readonly Cuts[]; // what the lengths are cut into, before spares
  readonly packs: number;
  readonly spend: Decimal;
  readonly left: Decimal;
  readonly leftValue: Decimal;
  readonly offcuts: Decimal; // ends of spools too short to count as left
}

export interface BuyGroup {
  readonly supplier: string | undefined;
  readonly orderBy: Day | undefined;
  readonly rows: readonly BuyRow[];
  readonly spend: Decimal;
}

export interface BuyingList {
  readonly groups: readonly BuyGroup[]; // the earliest day first, undated last
  readonly rows: readonly BuyRow[]; // in the order the recipes name the items
  readonly pieces: number; // those with a recipe
  readonly piecesWithoutRecipe: number;
  readonly spend: Decimal;
  readonly leftValue: Decimal;
  readonly each: Decimal | undefined; // true wholesale each: spend over pieces; undefined for no pieces
  readonly saving: Decimal; // against every event buying for itself; never negative
  readonly missing: readonly MissingPrice[]; // not in any figure above
}

export interface BuyingOptions {
  readonly usualSpare: Decimal; // percent, for plants whose row has none
  readonly orderDay?: OrderDay;
  readonly unsized?: readonly string[]; // listed, but nobody has said how many are in a pack
}

/** The list for these events, the earliest event first. */
export const buyingList = (events: readonly EventToBuy[], items: readonly Item[], options: BuyingOptions): BuyingList => {
  const asked = events.map((event) => needsOf(event, items, options.unsized ?? [], options.orderDay ?? (() => undefined)));
  const byItem = new Map<Item, Need[]>();
  for (const need of asked.flatMap(({ needs }) => needs)) byItem.set(need.item, [...(byItem.get(need.item) ?? []), need]);

  let saving = zero;
  const rows = [...byItem].flatMap(([item, needs]) => {
    const { purchases, packsApart } = poolNeeds(item, needs, spareOf(item, options.usualSpare));
    const packs = purchases.reduce((total, one) => total + one.packs, 0);
    saving = saving.plus(item.packPrice.times(packsApart - packs));
    return purchases.map(
      (one): BuyRow => ({
        item,
        status: one.status,
        orderBy: one.orderBy,
        events: one.events,
        need: one.need,
        cuts: one.cuts,
        packs: one.packs,
        spend: item.packPrice.times(one.packs),
        left: one.left,
        leftValue: leftValue(item, one.left),
        offcuts: one.offcuts,
      }),
    );
  });
  const batches = events.flatMap((event) => event.batches);
  const pieces = countPieces(batches.filter((batch) => batch.lines.length > 0));
  const spend = sum(rows.map((row) => row.spend));
  return {
    groups: groupRows(rows),
    rows,
    pieces,
    piecesWithoutRecipe: countPieces(batches) - pieces,
    spend,
    leftValue: sum(rows.map((row) => row.leftValue)),
    each: pieces > 0 ? spend.div(pieces) : undefined,
    saving,
    missing: [...new Map(asked.flatMap(({ missing }) => missing).map((lack) => [`${lack.ingredient} ${lack.why}`, lack])).values()],
  };
};

const countPieces = (batches: readonly { readonly pieces: number }[]): number => batches.reduce((total, { pieces }) => total + pieces, 0);

const last = '\uffff'; // sorts what has no day or no supplier to the end
const groupRows = (rows: readonly BuyRow[]): readonly BuyGroup[] => {
  const groups = new Map<string, BuyRow[]>();
  for (const row of rows) {
    const key = `${row.orderBy ?? last}\t${row.item.supplier ?? last}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, own]) => ({
      supplier: own[0]?.item.supplier,
      orderBy: own[0]?.orderBy,
      rows: own,
      spend: sum(own.map((row) => row.spend)),
    }));
};

/** True wholesale against what the price leaves for it, over all pieces. `budget`: W times the pieces, exact. */
export const againstBudget = (list: BuyingList, budget: Decimal): { readonly over: Decimal; readonly overEach: Decimal | undefined } => {
  const over = list.spend.minus(budget);
  return { over, overEach: list.pieces > 0 ? over.div(list.pieces) : undefined };
};
