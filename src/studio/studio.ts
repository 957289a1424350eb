// What a studio knows beyond its settings: price list, bench crew, learned minutes. The fold of the studio-wide facts said in any of its threads.

import type { FactOf } from '../reading/fact.ts';
import type { StudioSettings } from './settings.ts';

export interface StudioState {
  readonly settings: StudioSettings;
  readonly packs: readonly FactOf<'pack'>[]; // oldest first; of one item the newest word on each field holds
  readonly crew: readonly FactOf<'crew'>[];
  readonly drying: readonly FactOf<'drying'>[]; // newest wins by plant
  readonly recipes?: readonly FactOf<'recipe'>[]; // saved under a name; newest last
}

export const newStudio = (settings: StudioSettings): StudioState => ({ settings, packs: [], crew: [], drying: [] });
