// Studio-wide facts: price-list lines and bench crew are kept in the order they were said (a later line may
// leave out what an earlier one told), drying days replace those of the same plant, saved recipes those of the same name and kind.

import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { Fact, FactName, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import type { StudioState } from '../studio/studio.ts';

const studioFacts: ReadonlySet<FactName> = new Set<FactName>(['pack', 'packed', 'crew', 'drying']);
export const isStudioFact = (fact: Fact): boolean => studioFacts.has(fact.fact);

/** Whether the question is one of what the studio knows: a shift's day, what a bunch costs. */
export const asksOfStudio = ({ choices }: Ask): boolean =>
  choices.length > 0 && choices.every(({ facts }) => facts.length > 0 && facts.every(isStudioFact));

/** An imported list is thousands of facts at once: those are added together, not one by one. */
export const applyStudioFacts = (state: StudioState, facts: readonly Fact[]): StudioState => {
  const packs = facts.filter((fact) => fact.fact === 'pack');
  const listed = packs.length === 0 ? state : { ...state, packs: [...state.packs, ...packs] };
  return facts.reduce(applyOne, listed);
};

const applyOne = (state: StudioState, fact: Fact): StudioState => {
  if (fact.fact === 'crew') return { ...state, crew: [...state.crew, fact] };
  if (fact.fact === 'drying') return { ...state, drying: [...state.drying.filter((one) => one.item !== fact.item), fact] };
  if (fact.fact === 'recipe') return { ...state, recipes: [...(state.recipes ?? []).filter((one) => !sameRecipe(one, fact)), fact] };
  return state;
};

const sameRecipe = (a: FactOf<'recipe'>, b: FactOf<'recipe'>): boolean =>
  ingredientKey(a.name ?? '') === ingredientKey(b.name ?? '') && a.piece === b.piece;
