// Up to three recipes of five or six ingredients that put the most plant material into this many pieces for what the stems budget buys in whole packs.
// Each is the proven best of its list (best-mix.ts). A further one is the best once the main ingredient of those before, the one worth most in the
// piece, is off the list; an ingredient that alone holds a role stays.

import type { Decimal } from '../values/decimal.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { roundTo } from '../values/rounding.ts';
import { bestMix, ingredientsLeast, leastSpend, type Mix } from './best-mix.ts';
import { type BuyingList, buyingList } from './buying-list.ts';
import { type Choice, choicesOf, hasPart, lacksRole, scaledDown, unscaled, usualStems } from './fit-choices.ts';
import type { Item } from './item.ts';
import { type RecipeLine, stems } from './recipe-lines.ts';

export interface FitWanted {
  readonly stemsBudget: Decimal; // for one piece
  readonly pieces: number;
  readonly usualSpare: Decimal; // percent
  readonly stemsByRole?: typeof usualStems;
}

export interface FittingRecipe {
  readonly recipe: readonly RecipeLine[];
  readonly list: BuyingList; // its packs, spend and what is left over
  readonly worth: Decimal; // of the plant material in one piece, to a ten-thousandth
}

export interface WhatFits {
  readonly recipes: readonly FittingRecipe[]; // the best first; one to three
  readonly withoutRole: readonly string[]; // plants left out because the list doesn't say their role
}

export const whatFits = (items: readonly Item[], wanted: FitWanted, most = 3): Result<WhatFits> => {
  if (wanted.pieces <= 0) return failed('count-not-positive', { words: String(wanted.pieces) });
  const listed = items.filter(hasPart);
  if (listed.length < ingredientsLeast) return failed('too-few-ingredients', { listed: listed.length, wanted: ingredientsLeast });
  let choices = listed.map((item) => choicesOf(item, wanted.pieces, wanted.usualSpare, wanted.stemsByRole ?? usualStems));
  const budget = scaledDown(wanted.stemsBudget.times(wanted.pieces));
  const recipes: FittingRecipe[] = [];
  while (recipes.length < most) {
    const mix = bestMix(choices, budget);
    if (mix === undefined) break;
    recipes.push(asRecipe(mix, wanted));
    const main = mainIngredient(mix, choices);
    if (main === undefined) break;
    choices = choices.filter(([first]) => first?.item !== main);
  }
  if (recipes.length > 0) return ok({ recipes, withoutRole: items.filter(lacksRole).map((item) => item.name) });
  const least = leastSpend(choices);
  const each = least === undefined ? undefined : roundTo(unscaled(least).div(wanted.pieces), 4, 'up').toFixed(4);
  return failed('nothing-fits', { least: each, budget: wanted.stemsBudget.toFixed(4) });
};

const mainIngredient = (mix: Mix, choices: readonly (readonly Choice[])[]): Item | undefined => {
  const inRole = (role: string) => choices.filter(([first]) => first?.role === role).length;
  const [main] = mix.choices.filter((choice) => inRole(choice.role) > 1).sort((a, b) => b.value - a.value);
  return main?.item;
};

const asRecipe = (mix: Mix, wanted: FitWanted): FittingRecipe => {
  const order = Object.keys(usualStems);
  const chosen = [...mix.choices].sort((a, b) => order.indexOf(a.role) - order.indexOf(b.role));
  const recipe = chosen.map((choice) => stems(choice.item.name, choice.stems));
  const event = { id: '', batches: [{ piece: 'unspecified' as const, pieces: wanted.pieces, lines: recipe }], keeps: true, steps: [] };
  const list = buyingList(
    [event],
    chosen.map((choice) => choice.item),
    { usualSpare: wanted.usualSpare },
  );
  return { recipe, list, worth: unscaled(mix.value).div(wanted.pieces) };
};
