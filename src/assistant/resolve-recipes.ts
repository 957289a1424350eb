// Recipes that lean on something outside their message: used again from the studio's book, saved into it, or naming an ingredient by its part
// ("a second focal"). What is stored is plain lines, so that a thread never changes because another one did.

import type { Item } from '../buying/item.ts';
import { type NamedRecipe, recipesNamed } from '../buying/recipe-book.ts';
import { matchIngredient } from '../handbook/ingredient-names.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { readRole, soundsLikeSundry } from '../handbook/roles.ts';
import type { Fact, FactOf, RecipeLineFact } from '../reading/fact.ts';
import { applyFacts } from '../thread/apply-facts.ts';
import { recipeOf } from '../thread/apply-recipe.ts';
import type { EventState } from '../thread/event.ts';
import { recipeTrouble } from '../thread/recipe-trouble.ts';
import { failed, ok, type Result } from '../values/result.ts';

type Recipe = FactOf<'recipe'>;

export interface RecipeContext {
  readonly event: EventState; // as it was before the message
  readonly book: () => readonly NamedRecipe[];
  readonly items: () => readonly Item[];
}

export interface Resolved {
  readonly event: readonly Fact[];
  readonly saved: readonly Recipe[]; // for the studio's book
}

/** The facts of one message in order; each sees what those before it did. */
export const resolveRecipes = (facts: readonly Fact[], context: RecipeContext): Result<Resolved> => {
  const event: Fact[] = [];
  const saved: Recipe[] = [];
  let state = applyFacts(
    context.event,
    facts.filter((fact) => fact.fact === 'pieces'),
  );
  for (const fact of facts) {
    if (fact.fact !== 'recipe') {
      event.push(fact);
      continue;
    }
    const wrong = isReuse(fact) ? undefined : recipeTrouble(state, fact);
    if (wrong) return { ok: false, problem: wrong };
    const unclear = isReuse(fact) || fact.saves ? undefined : partUnclear(fact, state, context);
    if (unclear) return unclear;
    const own = fact.saves ? ok([]) : isReuse(fact) ? reused(fact, state, context.book()) : ok([unnamed(withParts(fact, state, context))]);
    if (!own.ok) return own;
    event.push(...own.value);
    state = applyFacts(state, own.value);
    if (fact.name === undefined || isReuse(fact)) continue;
    const kept = toSave(fact, fact.name, state);
    if (kept.length === 0) return failed('no-recipe-yet', {});
    saved.push(...kept);
  }
  return ok({ event, saved });
};

/** The name belongs to the book; the event keeps the lines. */
const unnamed = ({ name: _, ...fact }: Recipe): Recipe => fact;

const isReuse = (fact: Recipe): boolean => fact.name !== undefined && !fact.saves && fact.lines.length === 0;

const toSave = (fact: Recipe, name: string, state: EventState): readonly Recipe[] =>
  Object.entries(state.recipes)
    .filter(([kind, lines]) => (lines?.length ?? 0) > 0 && (fact.piece === undefined || kind === fact.piece))
    .map(([kind, lines]) => ({
      fact: 'recipe',
      lines: [...(lines ?? [])],
      ...(kind === 'any' ? {} : { piece: kind as PieceKind }),
      name,
      words: fact.words,
    }));

/** A book's only recipe serves any kind; of several, those for the kinds of this order. */
const reused = (fact: Recipe, state: EventState, book: readonly NamedRecipe[]): Result<readonly Recipe[]> => {
  const { name = '', ...rest } = fact;
  const found = recipesNamed(book, name);
  if (!found.ok) return found;
  const kinds = new Set(fact.piece === undefined ? state.lines.map((line) => line.piece) : [fact.piece]);
  const fitting = found.value.filter((recipe) => recipe.piece === undefined || kinds.size === 0 || kinds.has(recipe.piece));
  const only = found.value.length === 1;
  const taken = only || fitting.length === 0 ? found.value.slice(-1) : fitting;
  return ok(
    taken.map((recipe) => {
      const piece = fact.piece ?? (only && kinds.size > 0 ? undefined : recipe.piece);
      return { ...rest, lines: [...recipe.lines], ...(piece === undefined ? {} : { piece }), from: recipe.name };
    }),
  );
};

/** "A second focal" is the recipe's own focal flower, where it has just one. */
const withParts = (fact: Recipe, state: EventState, { items }: RecipeContext): Recipe => {
  if (!fact.lines.some((line) => readRole(line.ingredient) !== undefined)) return fact;
  const held = recipeOfAny(fact, state);
  const all = [...held, ...fact.lines];
  return { ...fact, lines: fact.lines.map((line) => ({ ...line, ingredient: playing(line, all, items()) })) };
};

/** "A second focal" of a recipe whose focal flower nobody named: its flowers are, so that one can be said. */
const partUnclear = (fact: Recipe, state: EventState, context: RecipeContext): Result<never> | undefined => {
  if (!fact.adds) return undefined;
  const left = withParts(fact, state, context).lines.find((line) => isPlantPart(line.ingredient));
  const held = [...new Set(recipeOfAny(fact, state).map((line) => line.ingredient))].filter((name) => !soundsLikeSundry(name));
  return left === undefined || held.length < 2 ? undefined : failed('not-in-recipe', { ingredient: left.ingredient, known: held });
};

const isPlantPart = (name: string): boolean => {
  const role = readRole(name);
  return role !== undefined && role !== 'sundry';
};

const recipeOfAny = (fact: Recipe, state: EventState): readonly RecipeLineFact[] =>
  fact.piece === undefined ? Object.values(state.recipes).flatMap((lines) => lines ?? []) : recipeOf(state, fact.piece);

const playing = (line: RecipeLineFact, among: readonly RecipeLineFact[], items: readonly Item[]): string => {
  const role = readRole(line.ingredient);
  const names = items.map((item) => item.name);
  if (role === undefined || matchIngredient(line.ingredient, names).match !== 'none') return line.ingredient;
  const found = new Set(
    among.flatMap((other) => {
      const match = matchIngredient(other.ingredient, names);
      return match.match !== 'none' && items.find((item) => item.name === match.name)?.role === role ? [other.ingredient] : [];
    }),
  );
  const [only, another] = [...found];
  if (only !== undefined && another === undefined) return only;
  // One flower and nothing else is its own focal.
  const flowers = new Set(among.map((other) => other.ingredient).filter((name) => name !== line.ingredient && !soundsLikeSundry(name)));
  const [sole, more] = [...flowers];
  return role === 'focal' && found.size === 0 && sole !== undefined && more === undefined ? sole : line.ingredient;
};
