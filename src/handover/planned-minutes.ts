// Bench minutes one piece of a kind is planned with in this event, as the bench plan has them, and where the figure comes from.

import { benchMinutes } from '../handbook/bench-minutes.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { benchRules, minutesEach } from '../planning/bench-rules.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { assumed, fromStudio, type Known, said } from '../values/known.ts';

export interface PlannedMinutes {
  readonly each: Known<number>;
  readonly range?: { readonly least: number; readonly most: number }; // the handbook's, where its figure is used
}

export const plannedMinutes = (event: EventState, studio: StudioState, piece: PieceKind): PlannedMinutes => {
  const { minutes, by } = minutesEach(piece, benchRules(studio), event.rules);
  if (by === 'this event') return { each: said(minutes) };
  if (by === 'the studio') return { each: fromStudio(minutes) };
  const { least, most } = benchMinutes[piece];
  return { each: assumed(minutes), range: { least, most } };
};
