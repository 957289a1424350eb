// Who wears the pieces. A wearer said again has the new count; counts are compared with the order elsewhere, never forced to agree.

import type { FactOf } from '../reading/fact.ts';
import type { EventState } from './event.ts';

export const applyWearers = (state: EventState, fact: FactOf<'wearers'>): EventState => {
  const again = new Set(fact.wearers.map((wearer) => wearer.wearer));
  return { ...state, wearers: [...state.wearers.filter((wearer) => !again.has(wearer.wearer)), ...fact.wearers] };
};
