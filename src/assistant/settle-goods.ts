// What a message's recipes and prices come to before they are stored: prices that cannot stand refuse it, rows of a list that change nothing are left
// out, recipes used again get their lines.

import { studioPrices } from '../buying/buy-for-events.ts';
import { priceListOf } from '../buying/price-list.ts';
import type { NamedRecipe } from '../buying/recipe-book.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { foldEvent } from '../thread/fold.ts';
import type { Day } from '../values/day.ts';
import type { Problem } from '../values/problem.ts';
import { ok, problem, type Result } from '../values/result.ts';
import { isPriceList } from './import-prices.ts';
import type { Standpoint } from './log-entries.ts';
import type { IncomingMessage, Store } from './ports.ts';
import { resolveRecipes } from './resolve-recipes.ts';

export interface Goods {
  readonly event: readonly Fact[];
  readonly studio: readonly Fact[];
}

type Pack = FactOf<'pack'>;

export const settleGoods = (store: Store, at: Standpoint, message: IncomingMessage, said: Goods): Result<Goods> => {
  const studio = at.studio.state;
  const told = said.studio.map((fact) => (fact.fact === 'packed' ? completed(fact, studio) : ok(fact)));
  const lacking = told.find((each) => !each.ok);
  if (lacking && !lacking.ok) return lacking;
  const ofStudio = told.flatMap((each) => (each.ok ? [each.value] : []));
  const packs = ofStudio.filter((fact): fact is Pack => fact.fact === 'pack');
  const wrong = packTrouble(packs, studio);
  if (wrong) return { ok: false, problem: wrong };
  const changing = isPriceList(message) && message.kind !== 'edit' ? changingOnly(packs, studio) : packs;
  const kept = [...ofStudio.filter((fact) => fact.fact !== 'pack'), ...changing];
  if (!said.event.some((fact) => fact.fact === 'recipe')) return ok({ event: said.event, studio: kept });
  const resolved = resolveRecipes(said.event, {
    event: message.kind === 'edit' ? withoutMessage(store, at, message.id) : at.thread.state,
    book: () => recipeBook(store, at),
    items: () => studioPrices(studio).items,
  });
  return resolved.ok ? ok({ event: resolved.value.event, studio: [...kept, ...resolved.value.saved] }) : resolved;
};

/** "Ruscus is a bunch of 10": the price said before, now of a pack that is known. */
const completed = ({ fact: _, ...packed }: FactOf<'packed'>, { packs }: StudioState): Result<Pack> => {
  const priced = packs.findLast(({ item }) => ingredientKey(item) === ingredientKey(packed.item));
  if (priced === undefined) return { ok: false, problem: problem('pack-without-price', packed) };
  const { size: _size, unit: _unit, ...rest } = priced;
  return ok({ ...rest, ...packed, item: priced.item });
};

const packTrouble = (packs: readonly Pack[], { settings }: StudioState): Problem | undefined => {
  const prices = new Map<string, Set<string>>();
  for (const { item, price } of packs) prices.set(ingredientKey(item), (prices.get(ingredientKey(item)) ?? new Set()).add(price));
  const twice = packs.find(({ item }) => (prices.get(ingredientKey(item))?.size ?? 0) > 1);
  if (twice) return problem('item-priced-twice', { item: twice.item, prices: [...(prices.get(ingredientKey(twice.item)) ?? [])] });
  return priceListOf(packs, { currency: settings.currency }).problems[0];
};

/** A list sent again every week must not make the studio's memory grow: rows that say what is known already are not kept again. */
const changingOnly = (packs: readonly Pack[], studio: StudioState): readonly Pack[] => {
  const known = new Map<string, Pack>();
  for (const pack of studio.packs) known.set(ingredientKey(pack.item), pack);
  return packs.filter((pack) => !sameRow(pack, known.get(ingredientKey(pack.item))));
};

const sameRow = (row: Pack, last: Pack | undefined): boolean => {
  if (last === undefined) return false;
  const { words: _row, ...a } = row;
  const { words: _last, ...b } = last;
  return JSON.stringify(Object.entries(a).sort()) === JSON.stringify(Object.entries(b).sort());
};

const withoutMessage = (store: Store, at: Standpoint, message: string): EventState =>
  foldEvent(store.entries(at.thread.key).filter((entry) => entry.message !== message));

const always = '0001-01-01' as Day; // past events lend their recipes too

/** Recipes of the other events by their names, then what was saved under a name. */
const recipeBook = (store: Store, at: Standpoint): readonly NamedRecipe[] => {
  const { key } = at.thread;
  const events = store
    .openEvents(key.workspace, always)
    .filter((open) => open.key.channel !== key.channel || open.key.thread !== key.thread)
    .flatMap(({ state }) => (state.title === undefined ? [] : namedAs(state.title, state)));
  const saved = (at.studio.state.recipes ?? []).map(({ name = '', piece, lines }) => ({ name, ...(piece ? { piece } : {}), lines }));
  return [...events, ...saved];
};

const namedAs = (name: string, { recipes }: EventState): readonly NamedRecipe[] =>
  Object.entries(recipes).flatMap(([kind, lines]) =>
    (lines?.length ?? 0) > 0
      ? [{ name, ...(kind === 'any' ? {} : { piece: kind as NonNullable<NamedRecipe['piece']> }), lines: lines ?? [] }]
      : [],
  );
