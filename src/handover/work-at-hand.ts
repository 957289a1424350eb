// What the work of one event, or of one kind of piece in it, involves, so that the handbook can say which cautions belong to it. Only what was said counts.

import type { CautionRow, WorkAtHand } from '../handbook/caution-row.ts';
import { type Caution, cautionsFor } from '../handbook/cautions.ts';
import { type Hazard, hazardsIn } from '../handbook/hazard-words.ts';
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

const among = <H extends Hazard>(wanted: readonly H[], told: readonly Hazard[]): readonly H[] => wanted.filter((one) => told.includes(one));

/** The work of the event, or of one kind of it. */
export const workAtHand = (event: EventState, studio: StudioState, piece?: PieceKind): Required<WorkAtHand> => {
  const kinds = piece === undefined ? [...new Set(event.lines.map((line) => line.piece))] : [piece];
  const lines = event.lines.filter((line) => kinds.includes(line.piece));
  const plants = ingredientsOf(event, piece);
  const keys = new Set(plants.map(ingredientKey));
  const notes = studio.packs.flatMap(({ item, note }) => (note !== undefined && keys.has(ingredientKey(item)) ? [note] : []));
  const wearers = wearersList(event).wearers.filter((wearer) => kinds.includes(wearer.piece.value));
  const told = [...hazardsIn([event.title ?? '', ...plants, ...notes].join('; ')), ...(event.care?.heard ?? [])];
  const magnetSaid = told.includes('magnet') && kinds.some((kind) => usualFixings[kind].includes('pin'));
  const cares = wearers.flatMap((wearer) => wearer.cares.flatMap(({ value }) => (value === 'heavy coat' ? [] : [value])));
  return {
    materials: [...new Set(lines.flatMap((line) => line.material ?? event.material ?? []))],
    plants,
    fixings: [...new Set([...kinds.flatMap((kind) => fixingsOf(event, kind)), ...(magnetSaid ? (['magnet'] as const) : [])])],
    methods: among(['silica gel', 'borax', 'hot glue'], told),
    wearers: [...new Set([...cares, ...among(['implant', 'allergy'], told)])],
    circumstances: among(['foraged', 'candles', 'border'], told),
  };
};

/**
 * The same for the thread, where only what was said is cautioned: every piece is wired by custom, and that alone would caution every order.
 * The bench card says it all the same.
 */
const workSaid = (event: EventState, studio: StudioState, piece?: PieceKind): Required<WorkAtHand> => {
  const work = workAtHand(event, studio, piece);
  const wired = work.plants.some((name) => /\bwires?\b/i.test(name));
  return { ...work, fixings: work.fixings.filter((fixing) => fixing !== 'wire' || wired) };
};

const ofChildren: ReadonlySet<Caution['id']> = new Set(['pin-child', 'magnet-child']);

/** What a child wears and how another piece is held on are two things: a flower girl's crown has no pin, whatever the groom's has. */
const onAnyKind = (event: EventState, studio: StudioState, id: Caution['id']): boolean =>
  [...new Set(event.lines.map((line) => line.piece))].some((kind) =>
    cautionsFor(workAtHand(event, studio, kind)).some((caution) => caution.id === id),
  );

const ofEvent = (event: EventState, studio: StudioState, work: WorkAtHand): readonly Caution[] =>
  cautionsFor(work).filter(({ id }) => !ofChildren.has(id) || onAnyKind(event, studio, id));

/** What the thread is cautioned about. `also`: what only the reply knows of, tax and wages. */
export const cautionsSaid = (
  event: EventState,
  studio: StudioState,
  also: NonNullable<WorkAtHand['circumstances']>,
): readonly Caution[] => {
  const work = workSaid(event, studio);
  return ofEvent(event, studio, { ...work, circumstances: [...work.circumstances, ...also] });
};

type Sheet = CautionRow['shownOn'][number];

const on =
  (sheet: Sheet) =>
  (caution: Caution): boolean =>
    caution.shownOn.includes(sheet);

/** The cautions that belong on a sheet of the whole event. */
export const cautionsOnSheet = (sheet: Sheet, event: EventState, studio: StudioState): readonly Caution[] =>
  ofEvent(event, studio, workAtHand(event, studio)).filter(on(sheet));

/** The cautions that belong on this sheet for this work. */
export const cautionsOn = (sheet: Sheet, work: WorkAtHand): readonly Caution[] => cautionsFor(work).filter(on(sheet));
