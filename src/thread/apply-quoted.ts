// The prices an event was quoted at. They stay while the studio's list moves on; a newer costing of the same item takes the place of the older.

import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { FactOf } from '../reading/fact.ts';
import type { EventState } from './event.ts';

export const applyQuoted = (state: EventState, { packs }: FactOf<'quoted'>): EventState => {
  const again = new Set(packs.map((pack) => ingredientKey(pack.item)));
  return { ...state, quoted: [...(state.quoted ?? []).filter((pack) => !again.has(ingredientKey(pack.item))), ...packs] };
};
