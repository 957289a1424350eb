// Bench minutes one piece of a kind is planned with in this event: the event's own rule, else the studio's figure, else the handbook's.

import { benchMinutes } from '../handbook/bench-minutes.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { benchRules, minutesEach } from '../planning/bench-rules.ts';
import { ruleFor } from '../pricing/event-rules.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { assumed, fromStudio, type Known, said } from '../values/known.ts';

export interface PlannedMinutes {
  readonly each: Known<number>;
  readonly range?: { readonly least: number; readonly most: number }; // the handbook's, where its figure is used
}

export const plannedMinutes = (event: EventState, studio: StudioState, piece: PieceKind): PlannedMinutes => {
  const rule = Number(ruleFor(event.rules, 'minutes', piece)?.to ?? Number.NaN);
  if (rule > 0 && Number.isFinite(rule)) return { each: said(rule) };
  const usual = minutesEach(piece, benchRules(studio));
  if (usual.own) return { each: fromStudio(usual.minutes) };
  const { least, most } = benchMinutes[piece];
  return { each: assumed(usual.minutes), range: { least, most } };
};
