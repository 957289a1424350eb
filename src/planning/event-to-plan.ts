// One open event as the planner takes it: its date, and per line the pieces still to make, what they are made of and how long each takes.
// Nobody said the material: the bench keeps room for fresh work, the tightest window, and the line says that this was assumed.

import { mixedBaseShare } from '../handbook/bench-minutes.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import { boughtReady, plantNamed } from '../handbook/plants.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState, OrderLine } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type BenchRules, benchRules, minutesEach } from './bench-rules.ts';

export interface LineToPlan {
  readonly piece: PieceKind;
  readonly material: Material;
  readonly materialAssumed: boolean;
  readonly ordered: number; // the most that was said: "40 to 45" is planned as 45
  readonly left: number;
  readonly basesLeft?: number; // of a mixed line, when some dried bases wait for their fresh part; else as many as are left
  readonly notBefore?: Day; // no work on it before this day, by the studio's word
  readonly minutesEach: number;
  readonly minutesBy: 'this event' | 'the studio' | 'the handbook';
  readonly wearer?: string;
}

export interface EventToPlan {
  readonly key: string;
  readonly title?: string;
  readonly date: Day;
  readonly time?: string; // HH:MM
  readonly handOver?: { readonly date?: Day; readonly time?: string };
  readonly lines: readonly LineToPlan[];
  readonly ingredients: readonly IngredientToGet[];
  readonly recipeDecided: boolean;
  readonly steps: readonly { readonly step: EventState['steps'][number]['step']; readonly item?: string }[];
}

/** An ingredient as the recipe names it, with what the studio's price list says about getting it. */
export interface IngredientToGet {
  readonly name: string;
  readonly leadDays?: number;
  readonly dryingDays?: number; // the studio's own; 0 is bought ready dried
}

/** Undefined for an event that cannot be planned: without a date, cancelled, or with nothing ordered. */
export const eventToPlan = (
  key: string,
  event: EventState,
  studio: StudioState,
  rules: BenchRules = benchRules(studio),
): EventToPlan | undefined => {
  if (event.date === undefined || event.cancelled || event.lines.length === 0) return undefined;
  const made = madeByLine(event, (piece) => event.progress[piece]?.made ?? 0);
  const bases = madeByLine(event, (piece) => event.progress[piece]?.bases ?? 0, 'mixed');
  return {
    key,
    ...(event.title === undefined ? {} : { title: event.title }),
    date: event.date,
    ...(event.time === undefined ? {} : { time: event.time }),
    ...(event.handOver === undefined ? {} : { handOver: event.handOver }),
    lines: event.lines.map((line, index) => {
      const material = line.material ?? event.material;
      const ordered = Math.max(line.count, line.countMax ?? 0);
      const each = minutesEach(line.piece, rules, event.rules);
      return {
        piece: line.piece,
        material: material ?? 'fresh',
        materialAssumed: material === undefined,
        ordered,
        left: Math.max(0, ordered - (made[index] ?? 0)),
        ...basesLeft(material, ordered, made[index] ?? 0, bases[index] ?? 0),
        ...(event.progress[line.piece]?.resumes === undefined ? {} : { notBefore: event.progress[line.piece]?.resumes as Day }),
        minutesEach: each.minutes,
        minutesBy: each.by,
        ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
      };
    }),
    ingredients: ingredientsOf(event, studio),
    recipeDecided: Object.keys(event.recipes).length > 0,
    steps: event.steps.map(({ step, item }) => ({ step, ...(item === undefined ? {} : { item }) })),
  };
};

// Progress is told by kind of piece. Where two lines share a kind, work that may be made early is taken as made first: fresh pieces cannot have been.
const early: readonly Material[] = ['artificial', 'preserved', 'dried', 'mixed', 'fresh'];

const madeByLine = (event: EventState, madeOf: (piece: PieceKind) => number, only?: Material): readonly number[] => {
  const made = event.lines.map(() => 0);
  const earliest = event.lines
    .map((line, index) => ({ line, index, material: line.material ?? event.material ?? 'fresh' }))
    .filter(({ material }) => only === undefined || material === only)
    .map(({ line, index, material }) => ({ line, index, rank: early.indexOf(material) }))
    .sort((a, b) => a.rank - b.rank || a.index - b.index);
  for (const piece of new Set(event.lines.map((line) => line.piece))) {
    let left = madeOf(piece);
    for (const { line, index } of earliest) {
      if (line.piece !== piece) continue;
      const here = Math.min(left, mostOf(line));
      made[index] = here;
      left -= here;
    }
  }
  return made;
};

/** Only where dried bases wait for their fresh part: a finished piece has its base in it. */
const basesLeft = (material: Material | undefined, ordered: number, made: number, bases: number): { readonly basesLeft?: number } =>
  material === 'mixed' && bases > made ? { basesLeft: Math.max(0, ordered - bases) } : {};

const mostOf = (line: OrderLine): number => Math.max(line.count, line.countMax ?? 0);

const ingredientsOf = (event: EventState, studio: StudioState): readonly IngredientToGet[] => {
  const names = new Set(
    Object.values(event.recipes).flatMap((lines) =>
      (lines ?? []).filter((line) => line.stems !== undefined).map((line) => line.ingredient),
    ),
  );
  return [...names].map((name) => {
    const pack = studio.packs.find((one) => ingredientKey(one.item) === ingredientKey(name)) ?? samePlant(name, studio);
    return {
      name,
      ...(pack?.leadDays === undefined ? {} : { leadDays: pack.leadDays }),
      ...(pack?.dryingDays === undefined ? {} : { dryingDays: pack.dryingDays }),
    };
  });
};

// "dried statice" in the recipe and "statice" on the price list are not the same thing to buy.
const samePlant = (name: string, studio: StudioState): StudioState['packs'][number] | undefined => {
  const plant = plantNamed(name);
  return plant ? studio.packs.find((one) => plantNamed(one.item) === plant && boughtReady(one.item) === boughtReady(name)) : undefined;
};

/** Minutes of the dried base of a mixed piece; the rest adds the fresh part. */
export const baseMinutes = (minutes: number): number => (minutes * mixedBaseShare.dividend) / mixedBaseShare.divisor;
