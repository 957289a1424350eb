// Recipes used again, found by the name they were saved under or the event they were made for. Lines stay as facts, so that a copy can be stored in
// another thread.

import { ingredientKey, nearestNames } from '../handbook/ingredient-names.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { RecipeLineFact } from '../reading/fact.ts';
import { failed, ok, type Result } from '../values/result.ts';

/** A recipe by the name it was saved under, or the title of the event it was made for; newest last. */
export interface NamedRecipe {
  readonly name: string;
  readonly piece?: PieceKind; // left out: for any kind
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

/** All that is kept under that name: the newest for each kind of piece. */
export const recipesNamed = (book: readonly NamedRecipe[], name: string): Result<readonly NamedRecipe[]> => {
  const newest = recipeNamed(book, name);
  if (!newest.ok) return newest;
  const same = book.filter((recipe) => nameKey(recipe.name) === nameKey(newest.value.name));
  return ok([...new Map(same.map((recipe) => [recipe.piece, recipe])).values()]);
};
