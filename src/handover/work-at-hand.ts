// What the work of one event, or of one kind of piece in it, involves, so that the handbook can say which cautions belong to it. Only what was said counts.

import { type Caution, type CautionRow, cautionsFor, type WorkAtHand } from '../handbook/cautions.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { usualFixings } from '../handbook/wearing.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { wearersList } from './wearers.ts';

type Of<K extends keyof WorkAtHand> = NonNullable<WorkAtHand[K]>[number];

/** Ingredients as the recipes name them: of one kind, or of the whole event. */
export const ingredientsOf = (event: EventState, piece?: PieceKind): readonly string[] => {
  const own = piece === undefined ? Object.values(event.recipes) : [event.recipes[piece] ?? event.recipes.any];
  return [...new Set(own.flatMap((lines) => (lines ?? []).map((line) => line.ingredient)))];
};

/** How the kind is held on: a magnet in its recipe takes the pin's place. */
export const fixingsOf = (event: EventState, piece: PieceKind): readonly Of<'fixings'>[] => {
  const magnet = ingredientsOf(event, piece).some((name) => /\bmagnet/i.test(name));
  return magnet ? [...usualFixings[piece].filter((fixing) => fixing !== 'pin'), 'magnet'] : usualFixings[piece];
};

const methodWords: readonly (readonly [Of<'methods'>, RegExp])[] = [
  ['silica gel', /\bsilica\b/i],
  ['borax', /\bborax\b/i],
  ['hot glue', /\b(hot|melt) ?glue|glue ?(gun|stick)/i],
];

/** The work of the event, or of one kind of it. */
export const workAtHand = (
  event: EventState,
  studio: StudioState,
  piece?: PieceKind,
): Required<Omit<WorkAtHand, 'circumstances'>> & WorkAtHand => {
  const kinds = piece === undefined ? [...new Set(event.lines.map((line) => line.piece))] : [piece];
  const lines = event.lines.filter((line) => kinds.includes(line.piece));
  const plants = ingredientsOf(event, piece);
  const keys = new Set(plants.map(ingredientKey));
  const notes = studio.packs.filter((pack) => keys.has(ingredientKey(pack.item))).map((pack) => pack.note ?? '');
  const wearers = wearersList(event).wearers.filter((wearer) => kinds.includes(wearer.piece.value));
  const words = [...plants, ...notes].join('; ');
  return {
    materials: [...new Set(lines.flatMap((line) => line.material ?? event.material ?? []))],
    plants,
    fixings: [...new Set(kinds.flatMap((kind) => fixingsOf(event, kind)))],
    methods: methodWords.flatMap(([method, said]) => (said.test(words) ? [method] : [])),
    wearers: [...new Set(wearers.flatMap(({ cares }) => cares.flatMap(({ value }) => (value === 'heavy coat' ? [] : [value]))))],
    circumstances: /\bforag|\bhedgerow|\bwild[- ]?(picked|gathered)/i.test(notes.join('; ')) ? ['foraged'] : [],
  };
};

/** The cautions that belong on this sheet. */
export const cautionsOn = (sheet: CautionRow['shownOn'][number], work: WorkAtHand): readonly Caution[] =>
  cautionsFor(work).filter((caution) => caution.shownOn.includes(sheet));
