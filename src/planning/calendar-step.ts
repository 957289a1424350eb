// One step of an event's make-ahead calendar, with what it rests on and, when it is late, what can still be done.

import type { DaysRange } from '../handbook/days-range.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Grade, Source } from '../handbook/sources.ts';
import type { Day } from '../values/day.ts';

/** Last to first. */
export const stepNames = [
  'event',
  'hand over',
  'boarded',
  'bench',
  'material ready',
  'check the drying',
  'condition',
  'hang or treat',
  'order by',
  'decide the material',
  'decide recipe and ribbon',
] as const;
export type StepName = (typeof stepNames)[number];

/** What a date rests on: a graded source, a figure worked out from some, or somebody's word. */
export type StepGrade = Grade | 'derived' | 'the studio' | 'said';

/** What can still be done about a late step. `inTime`: before the latest day the bench can start. */
export type Remedy =
  | { readonly do: 'do it today' }
  | { readonly do: 'hang on arrival'; readonly hang: Day; readonly readyFrom: Day; readonly readyBy: Day; readonly inTime: InTime }
  | { readonly do: 'silica gel'; readonly readyFrom: Day; readonly readyBy: Day; readonly inTime: InTime }
  | { readonly do: 'buy it ready dried'; readonly arrives: Day; readonly inTime: InTime }
  | { readonly do: 'order today'; readonly arrives: Day; readonly inTime: InTime }
  | { readonly do: 'fetch it from the market'; readonly by: Day }
  | { readonly do: 'make them fresh'; readonly on: Day; readonly hoursAhead?: number } // given where that is longer than fresh work keeps
  | { readonly do: 'board as they are finished'; readonly by: Day };
export type InTime = 'yes' | 'only if it dries fast' | 'no';

export interface CalendarStep {
  readonly step: StepName;
  readonly date: Day;
  readonly late: boolean; // past and not done
  readonly done: boolean;
  readonly time?: string; // HH:MM, of the event or the hand-over
  readonly material?: Material; // whose material the step is about: 'dried' or 'fresh' for the two parts of a mixed piece
  readonly movedFrom?: Day; // the closed day it would have fallen on
  readonly assumed: boolean; // rests on something nobody said
  readonly grade: StepGrade;
  readonly sources: readonly Source[];
  readonly days?: DaysRange; // drying or treating days
  readonly hours?: { readonly least: number; readonly most: number }; // conditioning
  readonly between?: { readonly from: Day; readonly to: Day }; // when it may be ready
  readonly plant?: string; // the slowest plant, which sets the date
  readonly minutes?: number; // of a bench day
  readonly pieces?: { readonly [piece in PieceKind]?: number };
  readonly bases?: { readonly [piece in PieceKind]?: number };
  readonly waitsFor?: StepName; // late, or without a date that can be kept, only because this earlier step is late: the remedies stand there
  readonly canStill: readonly Remedy[]; // empty unless late and waiting for nothing
}
