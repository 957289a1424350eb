// Who needs what: each event's batches turned into demands by item, with the mark the thread put on the item (ordered, received).

import { matchIngredient } from '../handbook/ingredient-names.ts';
import type { FactOf } from '../reading/fact.ts';
import type { Day } from '../values/day.ts';
import type { Batch } from './batches.ts';
import { type Item, isSundry } from './item.ts';
import { type MissingPrice, priceLines } from './priced-lines.ts';
import { type Demand, demandOf, poolDemand } from './whole-packs.ts';

/** One event as buying sees it. */
export interface EventToBuy {
  readonly id: string;
  readonly batches: readonly Batch[];
  readonly keeps: boolean; // dried, preserved or artificial: material bought early does not spoil
  readonly steps: readonly FactOf<'step'>[];
}

export type BuyStatus = 'received' | 'ordered' | 'to order';

export interface Need {
  readonly event: string;
  readonly item: Item;
  readonly demand: Demand;
  readonly status: BuyStatus;
  readonly keeps: boolean; // may be bought together with a later event's
  readonly orderBy: Day | undefined;
}

/** The day an item must be ordered for an event; planning knows it. Undefined: no date yet. */
export type OrderDay = (item: Item, event: string) => Day | undefined;

/** The last mark that names this item, or names none and so means them all. */
const statusOf = (item: Item, steps: readonly FactOf<'step'>[]): BuyStatus => {
  let status: BuyStatus = 'to order';
  for (const { step, item: named } of steps) {
    if (named !== undefined && matchIngredient(named, [item.name]).match === 'none') continue;
    if (step === 'ordered' || step === 'received') status = step;
    else if (step === 'cancelled') status = 'to order';
  }
  return status;
};

/** The needs of one event, one an item, in the order the recipes name them. */
export const needsOf = (
  event: EventToBuy,
  items: readonly Item[],
  unsized: readonly string[],
  orderDay: OrderDay,
): { readonly needs: readonly Need[]; readonly missing: readonly MissingPrice[] } => {
  const demands = new Map<Item, Demand[]>();
  const missing = new Map<string, MissingPrice>();
  for (const batch of event.batches) {
    const priced = priceLines(batch.lines, items, unsized);
    for (const lack of priced.missing) missing.set(`${lack.ingredient} ${lack.why}`, lack);
    for (const { line, item } of priced.lines) {
      demands.set(item, [...(demands.get(item) ?? []), demandOf(batch.pieces, line.amount)]);
    }
  }
  const needs = [...demands].map(([item, each]) => ({
    event: event.id,
    item,
    demand: poolDemand(each),
    status: statusOf(item, event.steps),
    keeps: event.keeps || isSundry(item) || item.dryingDays !== undefined,
    orderBy: orderDay(item, event.id),
  }));
  return { needs, missing: [...missing.values()] };
};
