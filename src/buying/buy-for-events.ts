// The buying list of open events from what the threads and the studio's price list say: recipes into batches, items from packs, order days from planning.

import { matchIngredient } from '../handbook/ingredient-names.ts';
import { spares } from '../handbook/spares.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, decimal, zero } from '../values/decimal.ts';
import { batchesOf } from './batches.ts';
import { type BuyingList, buyingList } from './buying-list.ts';
import type { Item } from './item.ts';
import { type PriceList, priceListOf } from './price-list.ts';

const freshSpare = decimal(spares.find((spare) => spare.of === 'fresh stems')?.percent ?? 0);
const keepingSpare = decimal(10); // for stems bought dried, preserved or artificial; common practice, no source

/** Percent of stems bought beyond the recipe where the price list says nothing: an event's own rule, else by what it is made of; of several events the most. */
export const usualSpare = (events: readonly EventState[]): Decimal =>
  most(events.map((event) => spareSaid(event) ?? (keeps(event) ? keepingSpare : freshSpare))) ?? keepingSpare;

const most = (percents: readonly Decimal[]): Decimal | undefined => {
  const [first, ...rest] = percents;
  return first && rest.reduce((top, percent) => (percent.greaterThan(top) ? percent : top), first);
};

/** What this event's own rule says: of everything, or of one item. */
export const spareSaid = ({ rules }: EventState, item?: string): Decimal | undefined => {
  const rule = rules.findLast(
    (one) =>
      one.what === 'spare' &&
      (item === undefined ? one.item === undefined : one.item && matchIngredient(one.item, [item]).match !== 'none'),
  );
  return rule && decimal(rule.to);
};

/** The items with what these events say of their spare in place of the list's; of several events the most. */
const withOwnSpare = (items: readonly Item[], events: readonly EventState[]): readonly Item[] => {
  if (!events.some(({ rules }) => rules.some((rule) => rule.what === 'spare' && rule.item))) return items;
  const usual = usualSpare(events);
  return items.map((item) => {
    const said = events.map((event) => spareSaid(event, item.name));
    if (said.every((percent) => percent === undefined)) return item;
    const spare = most(said.map((percent) => percent ?? item.spare ?? usual));
    return spare ? { ...item, spare } : item;
  });
};

const priceLists = new WeakMap<StudioState, PriceList>();

/** Put together once for each state of a studio: a long list is asked for with every message. */
export const studioPrices = (studio: StudioState): PriceList => {
  const known = priceLists.get(studio) ?? priceListOf(studio.packs, { currency: studio.settings.currency });
  priceLists.set(studio, known);
  return known;
};

export interface EventWithRecipe {
  readonly id: string;
  readonly state: EventState;
  readonly orderBy: Day | undefined;
}

export const buyForEvents = (events: readonly EventWithRecipe[], prices: PriceList): BuyingList =>
  buyingList(
    events
      .filter(({ state }) => Object.keys(state.recipes).length > 0)
      .map(({ id, state }) => ({ id, batches: batchesOf(state), keeps: keeps(state), steps: state.steps })),
    withOwnSpare(
      prices.items,
      events.map(({ state }) => state),
    ),
    {
      usualSpare: usualSpare(events.map(({ state }) => state)),
      unsized: prices.unsized,
      orderDay: (_item, id) => events.find((event) => event.id === id)?.orderBy,
    },
  );

/** Everything of it can be bought early: nothing fresh among the lines. */
const keeps = (state: EventState): boolean =>
  state.lines.every((line) => {
    const material = line.material ?? state.material;
    return material === 'dried' || material === 'preserved' || material === 'artificial';
  });

/** Nothing to buy: an event without a recipe. */
export const nothingToBuy = (list: BuyingList): boolean => list.rows.length === 0 && list.spend.equals(zero) && list.missing.length === 0;
