// What changed between the price list a thread was quoted at and today's, for the items that matter to it.

import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { Item } from './item.ts';

export type PriceChange =
  | { readonly change: 'price'; readonly item: string; readonly from: string; readonly to: string; readonly dearer: boolean } // for a pack, as typed
  | { readonly change: 'pack'; readonly item: string; readonly from: string; readonly to: string; readonly dearer: boolean } // dearer: a stem, or a metre, costs more
  | { readonly change: 'gone'; readonly item: string }
  | { readonly change: 'new'; readonly item: string };

const packWords = (item: Item): string => `${item.size.toFixed()} ${item.unit.name}`;
const keyed = (items: readonly Item[]) => new Map(items.map((item) => [ingredientKey(item.name), item]));

const between = (quoted: Item, now: Item): PriceChange | undefined => {
  const dearer = now.packPrice.times(quoted.size).gt(quoted.packPrice.times(now.size));
  if (packWords(quoted) !== packWords(now)) {
    return {
      change: 'pack',
      item: now.name,
      from: `${quoted.packPrice.toFixed()} for ${packWords(quoted)}`,
      to: `${now.packPrice.toFixed()} for ${packWords(now)}`,
      dearer: quoted.unit.name === now.unit.name ? dearer : now.packPrice.gt(quoted.packPrice),
    };
  }
  if (quoted.packPrice.eq(now.packPrice)) return undefined;
  return { change: 'price', item: now.name, from: quoted.packPrice.toFixed(), to: now.packPrice.toFixed(), dearer };
};

/** Changes in price, pack and presence; suppliers, stock and notes are not part of a quote. `about`: item names; left out = all. */
export const priceChanges = (quoted: readonly Item[], today: readonly Item[], about?: readonly string[]): readonly PriceChange[] => {
  const before = keyed(quoted);
  const now = keyed(today);
  const wanted = about === undefined ? undefined : new Set(about.map(ingredientKey));
  const keys = [...new Set([...before.keys(), ...now.keys()])].filter((key) => wanted === undefined || wanted.has(key));
  return keys.flatMap((key) => {
    const old = before.get(key);
    const current = now.get(key);
    if (old === undefined) return current === undefined ? [] : [{ change: 'new', item: current.name } as const];
    if (current === undefined) return [{ change: 'gone', item: old.name } as const];
    return between(old, current) ?? [];
  });
};
