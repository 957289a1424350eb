// A recipe against a price list: each line with its item, or the reason it can't be costed yet. The recipe is kept either way.

import { matchIngredient } from '../handbook/ingredient-names.ts';
import { decimal } from '../values/decimal.ts';
import { type Item, packMetres } from './item.ts';
import type { RecipeLine } from './recipe-lines.ts';
import { wholeDown } from './whole-counts.ts';

export interface PricedLine {
  readonly line: RecipeLine;
  readonly item: Item;
  readonly assumed: boolean; // the name said is only part of the item's: say which item was taken
}

export type WhyMissing =
  | 'no price' // not on the list; `nearest` may help
  | 'which stem' // "3 stems makes 2": nobody has said of what
  | 'no pack size' // listed by the bunch, without how many are in it
  | 'sold by length' // the recipe counts it
  | 'sold by count' // the recipe cuts it
  | 'sold by weight'
  | 'unit unclear'
  | 'longer than a pack'; // one cut needs more than one spool holds

export interface MissingPrice {
  readonly ingredient: string;
  readonly why: WhyMissing;
  readonly item?: string; // the listed item it was matched to
  readonly nearest: readonly string[];
}

export interface PricedRecipe {
  readonly lines: readonly PricedLine[];
  readonly missing: readonly MissingPrice[];
}

const mismatch = (line: RecipeLine, item: Item): WhyMissing | undefined => {
  if (line.amount.kind === 'unclear') return 'unit unclear';
  if (item.unit.measure === 'weight') return 'sold by weight';
  if (line.amount.kind === 'stems') return item.unit.measure === 'length' ? 'sold by length' : undefined;
  const spool = packMetres(item);
  if (spool === undefined) return 'sold by count';
  return wholeDown(spool.div(line.amount.metres)).lt(decimal(1)) ? 'longer than a pack' : undefined;
};

interface Names {
  readonly names: readonly string[];
  readonly byName: ReadonlyMap<string, Item>;
}
const known = new WeakMap<readonly Item[], Names>(); // one price list costs many recipes

const namesOf = (items: readonly Item[]): Names => {
  const before = known.get(items);
  if (before !== undefined) return before;
  const names = { names: items.map((item) => item.name), byName: new Map(items.map((item) => [item.name, item])) };
  known.set(items, names);
  return names;
};

/** `unsized` names items whose pack size nobody has said yet. */
export const priceLines = (recipe: readonly RecipeLine[], items: readonly Item[], unsized: readonly string[] = []): PricedRecipe => {
  const { names, byName } = namesOf(items);
  const lines: PricedLine[] = [];
  const missing: MissingPrice[] = [];
  for (const line of recipe) {
    if (/^stems?$/i.test(line.ingredient)) {
      missing.push({ ingredient: line.ingredient, why: 'which stem', nearest: [] });
      continue;
    }
    const found = matchIngredient(line.ingredient, names);
    const item = found.match === 'none' ? undefined : byName.get(found.name);
    if (found.match === 'none' || item === undefined) {
      const waiting = matchIngredient(line.ingredient, unsized);
      const why = waiting.match === 'none' ? 'no price' : 'no pack size';
      missing.push({ ingredient: line.ingredient, why, nearest: found.match === 'none' && why === 'no price' ? found.nearest : [] });
      continue;
    }
    const why = mismatch(line, item);
    if (why === undefined) lines.push({ line, item, assumed: found.match === 'only one' });
    else missing.push({ ingredient: line.ingredient, why, item: item.name, nearest: [] });
  }
  return { lines, missing };
};
