// The card on the wall for one kind of piece: how many, what is in each, how long, the steps in order, and the cautions where the hazard is.

import { batchesOf } from '../buying/batches.ts';
import type { RecipeLine } from '../buying/recipe-lines.ts';
import type { Caution } from '../handbook/cautions.ts';
import { type CraftStep, craftSteps } from '../handbook/craft.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Source } from '../handbook/sources.ts';
import { type WearingSide, wearingSide } from '../handbook/wearing.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { orderCounts } from './order-counts.ts';
import { type PlannedMinutes, plannedMinutes } from './planned-minutes.ts';
import { cautionsOn, workAtHand } from './work-at-hand.ts';

/** Pieces made alike. One batch for most kinds; one more for each wearer with a recipe of their own. */
export interface CardBatch {
  readonly wearer?: string;
  readonly pieces: number;
  readonly lines: readonly RecipeLine[]; // in one piece; empty: no recipe yet
}

export interface BenchCard {
  readonly piece: PieceKind;
  readonly count: number; // ordered; the batches add up to it
  readonly materials: readonly Material[];
  readonly batches: readonly CardBatch[];
  readonly minutes: PlannedMinutes;
  readonly minutesAll: number; // each times count
  readonly worn: WearingSide;
  readonly steps: readonly CraftStep[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[]; // of steps, side and cautions, each once
}

/** Batches of one kind that share a wearer and a recipe are one batch on the card. */
const batchesOn = (event: EventState, piece: PieceKind): readonly CardBatch[] => {
  const alike = new Map<string, CardBatch>();
  for (const { piece: kind, wearer, pieces, lines } of batchesOf(event)) {
    if (kind !== piece || pieces <= 0) continue;
    const key = JSON.stringify(lines);
    const seen = alike.get(key);
    const whose = seen === undefined ? wearer : seen.wearer === wearer ? wearer : undefined; // made alike for several: nobody's own
    alike.set(key, { ...(whose === undefined ? {} : { wearer: whose }), pieces: pieces + (seen?.pieces ?? 0), lines });
  }
  return [...alike.values()];
};

const benchCard = (event: EventState, studio: StudioState, piece: PieceKind, count: number): BenchCard => {
  const work = workAtHand(event, studio, piece);
  const steps = craftSteps(piece);
  const worn = wearingSide(piece);
  const minutes = plannedMinutes(event, studio, piece);
  const cautions = cautionsOn('bench card', work);
  const sources = [...steps.map((step) => step.source), ...worn.sources, ...cautions.flatMap((caution) => caution.sources)];
  return {
    piece,
    count,
    materials: work.materials,
    batches: batchesOn(event, piece),
    minutes,
    minutesAll: minutes.each.value * count,
    worn,
    steps,
    cautions,
    sources: [...new Set(sources)],
  };
};

/** One card for each kind in the order. */
export const benchCards = (event: EventState, studio: StudioState): readonly BenchCard[] =>
  orderCounts(event).map(({ piece, count }) => benchCard(event, studio, piece, count));
