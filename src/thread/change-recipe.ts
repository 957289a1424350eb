// Changes to a recipe's lines: more or other of an ingredient, one dropped, one swapped, all scaled. Lines stay as they were said, so that nothing is rounded.

import { ingredientKey, matchIngredient } from '../handbook/ingredient-names.ts';
import type { FactOf, RecipeLineFact } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';

type Lines = readonly RecipeLineFact[];

/** Whether two names mean one ingredient of these lines: "eucalyptus" is the recipe's only eucalyptus. */
export const ingredientIn = (lines: Lines, said: string): string | undefined => {
  const found = matchIngredient(
    said,
    lines.map((line) => line.ingredient),
  );
  return found.match === 'none' ? undefined : found.name;
};

const sameWearer = (a: RecipeLineFact, b: RecipeLineFact): boolean => a.wearer?.toLowerCase() === b.wearer?.toLowerCase();

const isNone = (line: RecipeLineFact): boolean => line.stems === 0 || line.length === 0;

/** Joins the line, or puts it in the place of the line for that ingredient and wearer; none of it takes the line away. */
export const withLine = (lines: Lines, line: RecipeLineFact): Lines => {
  const name = ingredientIn(lines, line.ingredient) ?? line.ingredient;
  const replaces = (other: RecipeLineFact) => ingredientKey(other.ingredient) === ingredientKey(name) && sameWearer(other, line);
  const own = isNone(line) ? [] : [{ ...line, ingredient: name }];
  return lines.some(replaces) ? lines.flatMap((other) => (replaces(other) ? own : [other])) : [...lines, ...own];
};

export const withoutIngredient = (lines: Lines, said: string): Lines => {
  const name = ingredientIn(lines, said);
  return name === undefined ? lines : lines.filter((line) => ingredientKey(line.ingredient) !== ingredientKey(name));
};

export const swapped = (lines: Lines, said: string, by: string): Lines => {
  const name = ingredientIn(lines, said);
  if (name === undefined) return lines;
  return lines.map((line) => (ingredientKey(line.ingredient) === ingredientKey(name) ? { ...line, ingredient: by } : line));
};

/** Every amount times this much: 1.5 for a fuller piece. */
export const scaled = (lines: Lines, by: string): Lines =>
  lines.map((line) => {
    const times = (amount: number): number => decimal(amount).times(by).toNumber();
    return line.length === undefined ? { ...line, stems: times(line.stems ?? 1) } : { ...line, length: times(line.length) };
  });

/** What one fact changes in lines that are already there; its own lines are not among it unless it adds. */
export const changedBy = (lines: Lines, fact: FactOf<'recipe'>): Lines => {
  const added = fact.adds ? fact.lines.reduce(withLine, lines) : lines;
  const dropped = (fact.drops ?? []).reduce(withoutIngredient, added);
  const other = (fact.swaps ?? []).reduce((all, swap) => swapped(all, swap.ingredient, swap.with), dropped);
  return fact.scale === undefined ? other : scaled(other, fact.scale);
};
