// Recipes used again: found by name, scaled, and changed line by line. Lines stay as facts, so that a copy can be stored in another thread.

import { ingredientKey, nearestNames } from '../handbook/ingredient-names.ts';
import type { RecipeLineFact } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';
import { failed, ok, type Result } from '../values/result.ts';

/** A recipe by the name it was saved under, or the title of the event it was made for; newest last. */
export interface NamedRecipe {
  readonly name: string;
  readonly lines: readonly RecipeLineFact[];
}

const filler = /\b(the|our|same|recipe|as|from|for|event|wedding|party)\b/gi;
const nameKey = (name: string): string => ingredientKey(name.replace(filler, ' ')) || ingredientKey(name);

/** "same recipe as the autumn dance": the newest of that name. A near name is offered, never taken. */
export const recipeNamed = (book: readonly NamedRecipe[], name: string): Result<NamedRecipe> => {
  const found = book.findLast((recipe) => nameKey(recipe.name) === nameKey(name));
  if (found !== undefined) return ok(found);
  return failed('recipe-not-known', { name, nearest: nearestNames(nameKey(name), [...new Set(book.map((recipe) => recipe.name))]) });
};

/** Every amount times this much: 1.5 for a fuller piece. */
export const scaled = (lines: readonly RecipeLineFact[], by: string): readonly RecipeLineFact[] =>
  lines.map((line) => ({
    ...line,
    ...(line.length === undefined
      ? {
          stems: decimal(line.stems ?? 1)
            .times(by)
            .toNumber(),
        }
      : { length: decimal(line.length).times(by).toNumber() }),
  }));

export type RecipeChange =
  | { readonly change: 'put'; readonly line: RecipeLineFact } // adds it, or takes the place of the line for that ingredient and wearer
  | { readonly change: 'drop'; readonly ingredient: string }
  | { readonly change: 'swap'; readonly ingredient: string; readonly with: string };

const same = (a: string, b: string): boolean => ingredientKey(a) === ingredientKey(b);

export const changed = (lines: readonly RecipeLineFact[], change: RecipeChange): readonly RecipeLineFact[] => {
  if (change.change === 'drop') return lines.filter((line) => !same(line.ingredient, change.ingredient));
  if (change.change === 'swap')
    return lines.map((line) => (same(line.ingredient, change.ingredient) ? { ...line, ingredient: change.with } : line));
  const replaces = (line: RecipeLineFact) => same(line.ingredient, change.line.ingredient) && line.wearer === change.line.wearer;
  return lines.some(replaces) ? lines.map((line) => (replaces(line) ? change.line : line)) : [...lines, change.line];
};
