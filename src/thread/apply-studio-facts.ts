// Studio-wide facts: price-list lines and drying days replace those of the same name, bench crew is kept in the order it was said.

import type { Fact } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';

export const isStudioFact = (fact: Fact): boolean => fact.fact === 'pack' || fact.fact === 'crew' || fact.fact === 'drying';

export const applyStudioFacts = (state: StudioState, facts: readonly Fact[]): StudioState => facts.reduce(applyOne, state);

const applyOne = (state: StudioState, fact: Fact): StudioState => {
  if (fact.fact === 'pack') return { ...state, packs: [...state.packs.filter((pack) => pack.item !== fact.item), fact] };
  if (fact.fact === 'crew') return { ...state, crew: [...state.crew, fact] };
  if (fact.fact === 'drying') return { ...state, drying: [...state.drying.filter((one) => one.item !== fact.item), fact] };
  return state;
};
