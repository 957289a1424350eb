// A change to a recipe that cannot be carried out: there is no recipe, or what should go out of it is not in it.

import type { FactOf } from '../reading/fact.ts';
import type { Problem } from '../values/problem.ts';
import { problem } from '../values/result.ts';
import { changes, kindsChanged, recipeOf } from './apply-recipe.ts';
import { ingredientIn } from './change-recipe.ts';
import type { EventState } from './event.ts';

export const recipeTrouble = (state: EventState, fact: FactOf<'recipe'>): Problem | undefined => {
  if (fact.like !== undefined && recipeOf(state, fact.like).length === 0) return problem('no-recipe-yet', {});
  if (fact.lines.length > 0 || fact.like !== undefined || !changes(fact)) return undefined;
  const held = kindsChanged(state, fact).flatMap((kind) => recipeOf(state, kind));
  if (held.length === 0) return problem('no-recipe-yet', {});
  const out = [...(fact.drops ?? []), ...(fact.swaps ?? []).map((swap) => swap.ingredient)];
  const absent = out.find((said) => ingredientIn(held, said) === undefined);
  if (absent !== undefined) {
    return problem('not-in-recipe', { ingredient: absent, known: [...new Set(held.map((line) => line.ingredient))] });
  }
  return fact.scale !== undefined && Number(fact.scale) <= 0 ? problem('recipe-scale-not-positive', { by: fact.scale }) : undefined;
};
