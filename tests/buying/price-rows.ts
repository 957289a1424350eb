// Short ways to write price-list rows, and to cost a recipe by them, in a currency of two decimals.

import type { Item } from '../../src/buying/item.ts';
import { priceLines } from '../../src/buying/priced-lines.ts';
import { costRecipe, type PieceBudget, type RecipeCost } from '../../src/buying/recipe-cost.ts';
import type { RecipeLine } from '../../src/buying/recipe-lines.ts';
import { type LengthUnit, stem } from '../../src/handbook/units.ts';
import { decimal } from '../../src/values/decimal.ts';

type Rest = Partial<Omit<Item, 'name' | 'packPrice' | 'size' | 'unit'>>;

export const bunch = (name: string, packPrice: string | number, size: string | number, rest: Rest = {}): Item => ({
  name,
  packPrice: decimal(packPrice),
  size: decimal(size),
  unit: stem,
  pack: 'bunch',
  ...rest,
});

export const spool = (name: string, packPrice: string | number, size: string | number, unit: LengthUnit, rest: Rest = {}): Item => ({
  name,
  packPrice: decimal(packPrice),
  size: decimal(size),
  unit: { measure: 'length', name: unit },
  pack: 'spool',
  ...rest,
});

export const costOf = (recipe: readonly RecipeLine[], items: readonly Item[], budget: PieceBudget, usualSpare?: number): RecipeCost =>
  costRecipe(priceLines(recipe, items), budget, 2, usualSpare === undefined ? undefined : decimal(usualSpare));
