// The plan of the whole bench: what each day holds, what each event may count on, and what does not fit.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import type { BenchRules } from './bench-rules.ts';
import type { CalendarStep } from './calendar-step.ts';
import type { Cure } from './cures.ts';
import type { EventToPlan } from './event-to-plan.ts';

export type Stage = 'whole' | 'base' | 'finish';

/** Work on one line of one event on one day. `pieces` are finished that day; a piece begun counts on the day it is finished. */
export interface BenchTask {
  readonly key: string;
  readonly line: number;
  readonly piece: PieceKind;
  readonly material: Material;
  readonly stage: Stage; // 'base' and 'finish' are the two halves of a mixed piece
  readonly minutes: number;
  readonly pieces: number;
}

export interface DayPlan {
  readonly date: Day;
  readonly minutes: number; // planned
  readonly capacity: number; // bench minutes there are
  readonly full: boolean; // over the comfortable share
  readonly tasks: readonly BenchTask[];
}

export interface EventDay {
  readonly date: Day;
  readonly minutes: number;
  readonly pieces: { readonly [piece in PieceKind]?: number }; // whole pieces finished: the finish counts for mixed ones
  readonly bases: { readonly [piece in PieceKind]?: number }; // dried bases of mixed pieces
}

export interface EventPlan {
  readonly key: string;
  readonly event: EventToPlan;
  readonly minutesPlanned: number; // for the whole order
  readonly minutesLeft: number;
  readonly minutesShort: number; // of those, what fits nowhere
  readonly fits: boolean;
  readonly opens: Day; // the first working day any of its pieces may be made
  readonly boarded: Day; // the day the last of them goes on its board
  readonly handOver: Day;
  /** The first bench day when no day of its work is over the comfortable share. Absent when nothing is left or there is no such plan. */
  readonly comfortableStart?: Day;
  /** The latest day it may start with all events still fitting; one working day later fails. Absent when nothing is left or it does not fit. */
  readonly latestStart?: Day;
  readonly days: readonly EventDay[];
  readonly late: boolean; // its boarding day has passed with pieces still to make
  readonly hoursAhead?: number; // no bench day is near enough to the event: its fresh pieces must keep so long
  readonly materialAssumed: boolean; // nobody said it for some line: room is kept for fresh
  readonly calendar: readonly CalendarStep[]; // last to first
}

/** The stretch of days that lacks most. */
export interface TightStretch {
  readonly from: Day;
  readonly to: Day;
  readonly minutesNeeded: number;
  readonly minutesThere: number;
  readonly minutesShort: number;
  readonly keys: readonly string[]; // events whose work lies wholly inside it
}

export interface BenchPlan {
  readonly today: Day;
  readonly rules: BenchRules;
  readonly fits: boolean;
  readonly minutesShort: number;
  readonly nobodyAtTheBench: boolean; // not one bench minute from today to the last closing
  readonly days: readonly DayPlan[]; // days with work only
  readonly events: readonly EventPlan[]; // by date
  readonly of: (key: string) => EventPlan | undefined; // one of them, without working out the others
  readonly tight?: TightStretch;
  readonly cures: readonly Cure[]; // each is enough by itself, and was tried
  readonly notPlanned: readonly { readonly key: string; readonly why: 'past' | 'too far ahead' }[];
}
