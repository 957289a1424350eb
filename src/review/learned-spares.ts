// What the event taught about spares: how much of an item really went beyond the recipe, and how many pieces broke. Only offered, never stored here.

import { batchesOf } from '../buying/batches.ts';
import { buyingList } from '../buying/buying-list.ts';
import type { Item } from '../buying/item.ts';
import { priceListOf } from '../buying/price-list.ts';
import { spareOf } from '../buying/recipe-cost.ts';
import { matchIngredient } from '../handbook/ingredient-names.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { orderCounts } from '../handover/order-counts.ts';
import type { FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { type Decimal, decimal, hundred, zero } from '../values/decimal.ts';
import { roundTo } from '../values/rounding.ts';
import { isSpoilt, spoiltOf } from './spoilt.ts';

export interface LearnedSpare {
  readonly item: string;
  readonly unused: Decimal; // of the item's own unit
  readonly recipe: Decimal; // what the recipe takes for all the pieces
  readonly percent: Decimal; // really used beyond the recipe, whole percent up, never below 0
  readonly now: Decimal; // percent bought beyond the recipe until now
  readonly offer?: FactOf<'pack'>; // left out where nothing would change
}

export interface Breakage {
  readonly piece: PieceKind;
  readonly broke: number;
  readonly ordered: number;
  readonly percent: Decimal; // spare pieces that would have covered it, whole percent up
}

interface Had {
  readonly recipe: Decimal;
  readonly have: Decimal; // bought and in hand, if the buying list was followed
}

/** What this event needed and had of an item sold by the piece; undefined for lengths, whose ends no count tells. */
const hadOf = (event: EventState, item: Item, items: readonly Item[], usualSpare: Decimal): Had | undefined => {
  if (item.unit.measure !== 'count') return undefined;
  const toBuy = [{ id: 'this event', batches: batchesOf(event), keeps: true, steps: [] }];
  const rowFor = (list: readonly Item[], spare: Decimal) =>
    buyingList(toBuy, list, { usualSpare: spare }).rows.find((row) => row.item.name === item.name);
  const bought = rowFor(items, usualSpare);
  const bare = rowFor(
    items.map((one) => ({ ...one, spare: zero })),
    zero,
  );
  return bought && bare && { recipe: bare.need, have: bought.need.plus(bought.left) };
};

interface Kept extends Had {
  readonly item: Item;
}

/** The item a fact names and what the list bought of it; undefined where no recipe takes it. */
const keptOf = (named: string, event: EventState, studio: StudioState, usualSpare: Decimal): Kept | undefined => {
  const { items } = priceListOf(studio.packs, { currency: studio.settings.currency });
  const found = matchIngredient(
    named,
    items.map(({ name }) => name),
  );
  const item = found.match === 'none' ? undefined : items.find(({ name }) => name === found.name);
  const had = item && hadOf(event, item, items, usualSpare);
  return item === undefined || had === undefined || had.recipe.isZero() ? undefined : { item, ...had };
};

/** Of what the list bought, how much is good still, beside what the recipe takes. */
export const goodOf = (named: string, event: EventState, studio: StudioState, usualSpare: Decimal) => {
  const kept = keptOf(named, event, studio, usualSpare);
  return kept && { have: kept.have, recipe: kept.recipe, good: kept.have.minus(spoiltOf(event.actuals, named)) };
};

const learned = (fact: FactOf<'actual'>, event: EventState, studio: StudioState, usualSpare: Decimal): readonly LearnedSpare[] => {
  const { item: named, count } = fact;
  if (fact.what !== 'unused' || isSpoilt(fact) || named === undefined || count === undefined || !(count >= 0)) return [];
  const had = keptOf(named, event, studio, usualSpare);
  if (had === undefined) return [];
  const { item } = had;
  const used = had.have.minus(count);
  if (used.isNegative()) return []; // more left than the list would have bought: it was not followed, and tells nothing
  const beyond = used.minus(had.recipe);
  const percent = beyond.isNegative() ? zero : roundTo(beyond.times(hundred).dividedBy(had.recipe), 0, 'up');
  const now = spareOf(item, usualSpare);
  const pack = studio.packs.findLast((one) => one.item === item.name);
  const offer = pack === undefined || percent.equals(now) ? {} : { offer: { ...pack, spare: percent.toFixed(), words: fact.words } };
  return [{ item: item.name, unused: decimal(count), recipe: had.recipe, percent, now, ...offer }];
};

/** `usualSpare`: percent the studio buys beyond the recipe where an item has none of its own, as on the buying list. */
export const learnedSpares = (event: EventState, studio: StudioState, usualSpare: Decimal): readonly LearnedSpare[] =>
  event.actuals.flatMap((fact) => learned(fact, event, studio, usualSpare));

export const breakages = (event: EventState): readonly Breakage[] =>
  orderCounts(event).flatMap(({ piece, count }) => {
    const broke = event.progress[piece]?.broke ?? 0;
    return broke > 0 ? [{ piece, broke, ordered: count, percent: roundTo(decimal(broke).times(hundred).dividedBy(count), 0, 'up') }] : [];
  });
