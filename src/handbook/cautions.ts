// Where the work can hurt someone or touch a law: the usual care, shown once and again on the card where the hazard is.
// Each row says when it applies, in two short sentences, and leaves the last word to local rules and qualified people.

import { type HarmfulPlant, harmfulAmong, type PlantHazard } from './cautions-plants.ts';
import { cautionRows } from './cautions-table.ts';
import type { Material } from './pieces.ts';
import { bestGrade, type Grade, type Source } from './sources.ts';

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

/** A caution ready to show. */
export interface Caution {
  readonly id: CautionId;
  readonly wording: string;
  readonly sources: readonly Source[];
  readonly grade: Grade; // of its strongest source
  readonly notAdvice?: 'medical' | 'legal' | 'tax';
  readonly shownOn: CautionRow['shownOn'];
}

const meets = (wanted: readonly string[] | undefined, have: readonly string[] | undefined): boolean =>
  wanted === undefined || wanted.some((one) => have?.includes(one) ?? false);

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The cautions this work calls for, in the order of the table; none for work that calls for none. */
export const cautionsFor = (work: WorkAtHand): readonly Caution[] => {
  const onlyArtificial = work.materials !== undefined && work.materials.length > 0 && work.materials.every((one) => one === 'artificial');
  const harmful = onlyArtificial ? [] : harmfulAmong(work.plants ?? []); // a silk tulip has no sap
  const withHazard = (hazard: PlantHazard): readonly HarmfulPlant[] => harmful.filter((plant) => plant.hazards.includes(hazard));
  const holds = (trigger: CautionTrigger): boolean =>
    meets(trigger.materials, work.materials) &&
    meets(trigger.fixings, work.fixings) &&
    meets(trigger.methods, work.methods) &&
    meets(trigger.wearers, work.wearers) &&
    meets(trigger.circumstances, work.circumstances) &&
    (trigger.plantHazard === undefined || withHazard(trigger.plantHazard).length > 0);

  return cautionRows
    .filter((row) => row.when.some(holds))
    .map((row) => {
      const plants = row.when.flatMap((trigger) => (trigger.plantHazard === undefined ? [] : withHazard(trigger.plantHazard)));
      const sources = [...new Set([...row.sources, ...plants.flatMap((plant) => plant.sources)])];
      return {
        id: row.id,
        wording: capital(row.wording.replace('{plants}', listed(plants.map((plant) => plant.names[0] ?? '')))),
        sources,
        grade: bestGrade(sources),
        ...(row.notAdvice === undefined ? {} : { notAdvice: row.notAdvice }),
        shownOn: row.shownOn,
      };
    });
};

/** "Not medical advice." and the like; '' where the wording needs none. */
export const notAdviceLine = (caution: Caution): string => (caution.notAdvice === undefined ? '' : `Not ${caution.notAdvice} advice.`);
