// What one caution is: what calls for it, what it says, who says so, and where it is shown.

import type { PlantHazard } from './cautions-plants.ts';
import type { Material } from './pieces.ts';
import type { Source } from './sources.ts';

export type CautionId =
  | 'magnet'
  | 'magnet-child'
  | 'pin-child'
  | 'wire-ends'
  | 'allergy'
  | 'sap'
  | 'skin'
  | 'poisonous'
  | 'pollen'
  | 'pollen-disputed'
  | 'scent'
  | 'dried-dust'
  | 'silica'
  | 'silica-blue'
  | 'borax'
  | 'hot-glue'
  | 'flame'
  | 'foraging'
  | 'protected'
  | 'invasive'
  | 'border'
  | 'tax'
  | 'wages';

/** What the event at hand involves. Leave out what isn't known: nothing is cautioned on a guess. */
export interface WorkAtHand {
  readonly materials?: readonly Material[];
  readonly plants?: readonly string[]; // ingredients as typed
  readonly fixings?: readonly ('pin' | 'magnet' | 'wire')[];
  readonly methods?: readonly ('silica gel' | 'borax' | 'hot glue')[];
  readonly wearers?: readonly ('child' | 'implant' | 'allergy')[];
  readonly circumstances?: readonly ('foraged' | 'candles' | 'border' | 'tax' | 'wages')[];
}

/** All the keys given must hold; each holds if any one of its values does. */
export interface CautionTrigger extends Omit<WorkAtHand, 'plants'> {
  readonly plantHazard?: PlantHazard;
}

export interface CautionRow {
  readonly id: CautionId;
  readonly when: readonly CautionTrigger[]; // any one is enough
  readonly wording: string; // {plants} stands for the plants that called for it
  readonly sources: readonly Source[];
  readonly notAdvice?: 'medical' | 'legal' | 'tax';
  readonly shownOn: readonly ('bench card' | 'pin-on sheet' | 'packing list')[]; // beside the thread, where it is shown once
}
