// A recipe as exact amounts for one piece, from the lines a thread holds; and which of them a wearer's own piece takes.

import { ingredientKey } from '../handbook/ingredient-names.ts';
import { inMetres, type LengthUnit, readUnit } from '../handbook/units.ts';
import type { RecipeLineFact } from '../reading/fact.ts';
import { type Decimal, decimal } from '../values/decimal.ts';

export type Amount =
  | { readonly kind: 'stems'; readonly stems: Decimal } // stems, heads, pins: whatever is counted; parts allowed
  | { readonly kind: 'cut'; readonly length: Decimal; readonly unit: LengthUnit; readonly metres: Decimal }
  | { readonly kind: 'unclear'; readonly words: string }; // an amount in a unit we can't cost, kept so that it can be asked about

export interface RecipeLine {
  readonly ingredient: string;
  readonly amount: Amount;
}

export const stems = (ingredient: string, count: number | string | Decimal): RecipeLine => ({
  ingredient,
  amount: { kind: 'stems', stems: decimal(count) },
});

export const cut = (ingredient: string, length: number | string | Decimal, unit: LengthUnit): RecipeLine => ({
  ingredient,
  amount: { kind: 'cut', length: decimal(length), unit, metres: inMetres(decimal(length), unit) },
});

/** One fact as an exact line; an amount for several pieces is divided here, to forty digits. No amount said is one stem; a bare length is centimetres, as ribbon is cut. Nothing of it, or less, is no line. */
export const recipeLine = (fact: RecipeLineFact): RecipeLine | undefined => {
  const makes = fact.makes ?? 1;
  if (makes <= 0) return undefined;
  if (fact.length !== undefined) {
    if (fact.length <= 0) return undefined;
    const unit = readUnit(fact.unit ?? 'cm');
    if (unit === undefined || unit.measure === 'weight') {
      return { ingredient: fact.ingredient, amount: { kind: 'unclear', words: `${fact.length} ${fact.unit}` } };
    }
    const length = decimal(fact.length).div(makes);
    return unit.measure === 'length' ? cut(fact.ingredient, length, unit.name) : stems(fact.ingredient, length);
  }
  const count = fact.stems ?? 1;
  return count > 0 ? stems(fact.ingredient, decimal(count).div(makes)) : undefined;
};

const theRest = new Set(['rest', 'the rest', 'everyone else', 'others', 'the others']);

/**
 * The lines of one piece. A wearer's own line takes the place of the shared line for that ingredient, or joins them; lines for "the rest" are for
 * everyone without lines of their own.
 */
export const linesFor = (facts: readonly RecipeLineFact[], wearer?: string): readonly RecipeLine[] => {
  const isOwn = (fact: RecipeLineFact) => fact.wearer !== undefined && fact.wearer.toLowerCase() === wearer?.toLowerCase();
  const hasOwn = facts.some(isOwn);
  const own = facts.filter((fact) => (hasOwn ? isOwn(fact) : fact.wearer !== undefined && theRest.has(fact.wearer.toLowerCase())));
  const replaced = new Set(own.map((fact) => ingredientKey(fact.ingredient)));
  const shared = facts.filter((fact) => fact.wearer === undefined && !replaced.has(ingredientKey(fact.ingredient)));
  return [...shared, ...own].map(recipeLine).filter((line) => line !== undefined);
};

/** The wearers these lines treat differently. */
export const wearersNamed = (facts: readonly RecipeLineFact[]): readonly string[] => [
  ...new Set(facts.flatMap((fact) => (fact.wearer === undefined || theRest.has(fact.wearer.toLowerCase()) ? [] : [fact.wearer]))),
];
