// The price list as one event was quoted: today's, with the prices its recipes were costed at in place of newer ones.

import { ingredientKey, matchIngredient } from '../handbook/ingredient-names.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { studioPrices } from './buy-for-events.ts';
import type { Item } from './item.ts';
import type { PriceList } from './price-list.ts';

type Quote = FactOf<'quoted'>['packs'][number];

const asPack = (quote: Quote): FactOf<'pack'> => ({ fact: 'pack', ...quote, size: Number(quote.size), words: quote.item });

const asQuote = (item: Item): Quote => ({
  item: item.name,
  price: item.packPrice.toFixed(),
  size: item.size.toFixed(),
  unit: item.unit.name,
  ...(item.pack === undefined ? {} : { per: item.pack }),
});

/** Only price and pack are the quote's; supplier, stock and notes are today's. */
export const quotedPrices = (event: EventState, studio: StudioState, today: PriceList): PriceList => {
  const quoted = event.quoted ?? [];
  if (quoted.length === 0) return today;
  return studioPrices({ ...studio, packs: [...studio.packs, ...quoted.map(asPack)] });
};

/** Listed items that any recipe of the event uses. */
export const itemsUsed = (event: EventState, items: readonly Item[]): readonly Item[] => {
  const names = items.map((item) => item.name);
  const used = new Set(
    Object.values(event.recipes).flatMap((lines) =>
      (lines ?? []).flatMap((line) => {
        if (/^stems?$/i.test(line.ingredient)) return []; // nobody has said of what
        const found = matchIngredient(line.ingredient, names);
        return found.match === 'none' ? [] : [found.name];
      }),
    ),
  );
  return items.filter((item) => used.has(item.name));
};

/**
 * What a message leaves to be kept as quoted: items its event uses for the first time, and those whose recipe or price it says anew. Saying a recipe
 * again is how a thread takes today's prices. Undefined when nothing is new.
 */
export const quotedNow = (event: EventState, prices: PriceList, stated: readonly Fact[]): FactOf<'quoted'> | undefined => {
  const used = itemsUsed(event, prices.items);
  const before = new Map((event.quoted ?? []).map((quote) => [ingredientKey(quote.item), quote]));
  const priced = new Set(stated.flatMap((fact) => (fact.fact === 'pack' ? [ingredientKey(fact.item)] : [])));
  const restated = stated.some((fact) => fact.fact === 'recipe' && fact.lines.length > 0);
  const fresh = used
    .filter(({ name }) => restated || priced.has(ingredientKey(name)) || !before.has(ingredientKey(name)))
    .map(asQuote)
    .filter((quote) => JSON.stringify(quote) !== JSON.stringify(before.get(ingredientKey(quote.item))));
  return fresh.length === 0 ? undefined : { fact: 'quoted', packs: fresh, words: '' };
};
