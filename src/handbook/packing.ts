// What goes in the box and how it is kept until it is worn. Counts per board are common practice; the cold limits have their sources.

import type { Material, PieceKind } from './pieces.ts';
import { commonPractice, type Source } from './sources.ts';
import { wearingSources as from } from './sources-wearing.ts';

export interface BoardRule {
  readonly perBoard: number; // whole pieces on one covered card or in one box
  readonly on: 'board' | 'box';
  readonly pinsEach: number; // crossed pins stop a lapel piece turning; 0 where it isn't pinned on
  readonly source: Source; // of the pins; the count per board is common practice
}

const boards: Readonly<Record<PieceKind, BoardRule>> = {
  buttonhole: { perBoard: 12, on: 'board', pinsEach: 2, source: from.etiquette },
  'pin corsage': { perBoard: 6, on: 'board', pinsEach: 2, source: from.etiquette },
  corsage: { perBoard: 6, on: 'board', pinsEach: 2, source: from.etiquette },
  'wrist corsage': { perBoard: 6, on: 'box', pinsEach: 0, source: commonPractice },
  'flower crown': { perBoard: 2, on: 'box', pinsEach: 0, source: commonPractice },
  'hair flower': { perBoard: 12, on: 'board', pinsEach: 0, source: commonPractice },
  unspecified: { perBoard: 12, on: 'board', pinsEach: 2, source: commonPractice },
};

export const boardRule = (piece: PieceKind): BoardRule => boards[piece];

/** Spare pins to pack: one for every five needed, at least ten. Common practice, no source. */
export const sparePins = (needed: number): number => (needed === 0 ? 0 : Math.max(10, Math.ceil(needed / 5)));

export interface Keeping {
  readonly what: string;
  readonly how: string;
  readonly least?: number; // °C, the coldest it should be kept
  readonly most?: number; // °C
  readonly sources: readonly Source[];
}

const byMaterial: Readonly<Record<Material, readonly Keeping[]>> = {
  dried: [
    {
      what: 'dried pieces',
      how: 'dark, cool and dry, lid closed; sun fades them and damp spoils them',
      sources: [from.driedLight, from.driedBoxes],
    },
  ],
  preserved: [{ what: 'preserved pieces', how: 'dark, cool and dry; sun fades them', sources: [from.driedLight, from.driedBoxes] }],
  artificial: [{ what: 'artificial pieces', how: 'clean, dry and out of the sun', sources: [commonPractice] }],
  fresh: [
    {
      what: 'fresh pieces',
      how: 'boxed and chilled, never frozen, until about an hour before they are pinned on',
      least: 2,
      most: 3,
      sources: [from.freshCare, from.boardedCool],
    },
  ],
  mixed: [
    {
      what: 'mixed pieces',
      how: 'cool and dry: the dried part takes no damp, the fresh part no heat',
      sources: [commonPractice],
    },
  ],
};

// Fahrenheit in the sources: 32F = 0, 38F = 3.3, 42F = 5.6, 45F = 7.2, 50F = 10, 55F = 12.8, 60F = 15.6. What cold hurts has its least rounded up to a whole degree.
const byPlant: readonly { readonly names: RegExp; readonly keeping: Keeping }[] = [
  {
    names: /\b(phalaenopsis|phal|moth orchid)/,
    keeping: { what: 'moth orchids', how: 'not in the flower fridge', least: 13, sources: [from.phalaenopsis, from.orchidChill] },
  },
  {
    names: /\b(dendrobium|singapore orchid)/,
    keeping: {
      what: 'dendrobium orchids',
      how: 'not in the flower fridge',
      least: 13,
      most: 15,
      sources: [from.dendrobium, from.orchidChill],
    },
  },
  {
    names: /\bcymbidium/,
    keeping: {
      what: 'cymbidium',
      how: 'cool, with the other orchids; one source allows 7 °C, never under 4 °C',
      least: 10,
      sources: [from.orchidChill, from.cymbidium],
    },
  },
  {
    names: /\bcattleya/,
    keeping: {
      what: 'cattleya',
      how: 'cool; without water it lasts one day; one source allows 7 °C',
      least: 10,
      sources: [from.orchidChill, from.cattleya],
    },
  },
  {
    names: /\borchid/,
    keeping: {
      what: 'orchids',
      how: 'cool, not in the flower fridge: cold damage shows in 4 to 6 hours',
      least: 10,
      most: 15,
      sources: [from.orchidChill],
    },
  },
  {
    names: /\bstephanotis/,
    keeping: { what: 'stephanotis', how: 'cool, sealed and damp; the cold hurts it', least: 6, sources: [from.stephanotis] },
  },
];

/** How to keep these pieces: by material first, then each plant that must not be as cold. An orchid is named once, by its own row where it has one. */
export const keepingFor = (materials: readonly Material[], plants: readonly string[]): readonly Keeping[] => {
  const fresh = materials.some((material) => material === 'fresh' || material === 'mixed');
  const words = plants.map((plant) => plant.toLowerCase());
  const rows = fresh ? words.flatMap((word) => byPlant.find(({ names }) => names.test(word))?.keeping ?? []) : [];
  return [...new Set(materials)].flatMap((material) => byMaterial[material]).concat([...new Set(rows)]);
};

/** "not below 10 °C", "2 to 3 °C"; '' where no figure was found. */
export const keepingDegrees = ({ least, most }: Keeping): string => {
  if (least !== undefined && most !== undefined) return `${least} to ${most} °C`;
  if (least !== undefined) return `not below ${least} °C`;
  return most === undefined ? '' : `not above ${most} °C`;
};
