// Which plants at the bench are known to harm some people, how, and who says so. Names are the trade's and the botanist's, singular, lower case.
// "Mum" is left out on purpose: in a wedding thread it is a person.

import type { Source } from './sources.ts';
import { careSources as from } from './sources-care.ts';

export type PlantHazard = 'sap' | 'skin' | 'poisonous' | 'pollen' | 'pollen disputed' | 'scent' | 'invasive';

export interface HarmfulPlant {
  readonly names: readonly string[]; // the first is the one shown
  readonly hazards: readonly PlantHazard[];
  readonly sources: readonly Source[];
}

export const harmfulPlants: readonly HarmfulPlant[] = [
  { names: ['euphorbia', 'spurge'], hazards: ['sap'], sources: [from.euphorbiaEyes] },
  { names: ['alstroemeria', 'peruvian lily'], hazards: ['skin'], sources: [from.floristSkin, from.florists] },
  { names: ['tulip', 'tulipa'], hazards: ['skin', 'pollen'], sources: [from.floristSkin, from.florists, from.flowerAsthma] },
  { names: ['hyacinth', 'hyacinthus'], hazards: ['skin'], sources: [from.floristSkin] },
  { names: ['chrysanthemum', 'chrysanth'], hazards: ['skin', 'pollen'], sources: [from.floristSkin, from.flowerAsthma] },
  { names: ['gerbera'], hazards: ['skin'], sources: [from.floristSkin] },
  { names: ['feverfew', 'tanacetum'], hazards: ['skin'], sources: [from.floristSkin] },
  {
    names: ['narcissus', 'narcissi', 'daffodil', 'jonquil'],
    hazards: ['skin', 'poisonous'],
    sources: [from.floristSkin, from.harmfulList],
  },
  { names: ['carnation', 'dianthus'], hazards: ['skin', 'pollen'], sources: [from.floristSkin, from.driedFlowerAsthma] },
  { names: ['leatherleaf', 'leather leaf', 'arachniodes'], hazards: ['skin'], sources: [from.florists] },
  { names: ['arum'], hazards: ['skin'], sources: [from.harmfulList] },
  { names: ['ranunculus', 'ranunculi', 'persian buttercup'], hazards: ['skin', 'poisonous'], sources: [from.ranunculus] },
  { names: ['anemone'], hazards: ['skin'], sources: [from.anemone] },
  { names: ['delphinium'], hazards: ['poisonous'], sources: [from.delphinium] },
  { names: ['larkspur', 'consolida'], hazards: ['poisonous'], sources: [from.poisonousParts] },
  { names: ['lily of the valley', 'convallaria'], hazards: ['poisonous'], sources: [from.poisonousParts] },
  { names: ['monkshood', 'aconitum', 'aconite'], hazards: ['poisonous'], sources: [from.poisonousParts] },
  { names: ['oleander', 'nerium'], hazards: ['poisonous'], sources: [from.poisonousParts] },
  { names: ['foxglove', 'digitalis'], hazards: ['poisonous'], sources: [from.poisonousParts] },
  { names: ['freesia'], hazards: ['pollen'], sources: [from.flowerAsthma] },
  { names: ['acacia', 'mimosa', 'wattle'], hazards: ['pollen'], sources: [from.flowerAsthma, from.acacia] },
  { names: ['gypsophila', 'gyp', "baby's breath"], hazards: ['pollen'], sources: [from.driedFlowerAsthma] },
  { names: ['statice', 'limonium'], hazards: ['pollen'], sources: [from.driedFlowerAsthma] },
  { names: ['stephanotis'], hazards: ['pollen'], sources: [from.driedFlowerAsthma] },
  { names: ['sweet pea', 'sweetpea'], hazards: ['pollen'], sources: [from.driedFlowerAsthma] },
  { names: ['goldenrod', 'solidago'], hazards: ['pollen disputed'], sources: [from.goldenrod, from.goldenrodNot] },
  { names: ['gardenia'], hazards: ['scent'], sources: [from.gardenia] },
  { names: ['ivy', 'hedera'], hazards: ['invasive'], sources: [from.ivy] },
];

const plainName = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’‘]/gu, '')
    .replace(/[^a-z]+/gu, ' ')
    .trim();

const names = (plant: HarmfulPlant, words: string): boolean =>
  plant.names.some((name) => new RegExp(`(^| )${plainName(name)}(s|es)?( |$)`, 'u').test(words));

/** The harmful plants among ingredients as people type them ("3 white Tulips"); each once, in the order of the table. */
export const harmfulAmong = (ingredients: readonly string[]): readonly HarmfulPlant[] => {
  const words = ingredients.map(plainName);
  return harmfulPlants.filter((plant) => words.some((one) => names(plant, one)));
};
