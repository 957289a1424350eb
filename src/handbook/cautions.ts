// Where the work can hurt someone or touch a law: the usual care, shown once and again on the card where the hazard is.
// Each row says when it applies, in two short sentences, and leaves the last word to local rules and qualified people.

import { capital } from '../values/capital.ts';
import type { CautionId, CautionRow, CautionTrigger, WorkAtHand } from './caution-row.ts';
import { type HarmfulPlant, harmfulAmong, type PlantHazard } from './cautions-plants.ts';
import { cautionRows } from './cautions-table.ts';
import { bestGrade, type Grade, type Source } from './sources.ts';

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

/** The caution as it is shown everywhere, ending in "Not medical advice." and the like where it needs that. */
export const cautionWords = ({ wording, notAdvice }: Caution): string =>
  notAdvice === undefined ? wording : `${wording} Not ${notAdvice} advice.`;
