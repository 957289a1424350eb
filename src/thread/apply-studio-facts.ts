// Studio-wide facts: price-list lines and bench crew are kept in the order they were said (a later line may
// leave out what an earlier one told), drying days replace those of the same plant.

import type { Fact } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';

export const isStudioFact = (fact: Fact): boolean => fact.fact === 'pack' || fact.fact === 'crew' || fact.fact === 'drying';

export const applyStudioFacts = (state: StudioState, facts: readonly Fact[]): StudioState => facts.reduce(applyOne, state);

const applyOne = (state: StudioState, fact: Fact): StudioState => {
  if (fact.fact === 'pack') return { ...state, packs: [...state.packs, fact] };
  if (fact.fact === 'crew') return { ...state, crew: [...state.crew, fact] };
  if (fact.fact === 'drying') return { ...state, drying: [...state.drying.filter((one) => one.item !== fact.item), fact] };
  return state;
};
