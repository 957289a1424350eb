// A job: the pieces of one line still to make, or one stage of them, inside its window. Days inside the planner count from today = 0.

import type { Material, PieceKind } from '../handbook/pieces.ts';

export interface BenchJob {
  readonly event: number; // its place in the list of planned events
  readonly line: number;
  readonly piece: PieceKind;
  readonly material: Material;
  readonly stage: 'whole' | 'base' | 'finish';
  readonly each: number; // minutes for one piece, or for this stage of it
  readonly pieces: number;
  readonly minutes: number;
  readonly opened: number; // may be before today
  readonly opens: number; // never before today
  readonly closes: number;
  readonly closesAfter?: number; // bench minutes of the closing day that count
  readonly late: boolean;
}

/** Bench minutes per day from today on. */
export type DayMinutes = readonly number[];

/** Rounding noise of minutes such as a third of 15, far below a minute. */
export const slightly = 1e-6;

/** Bench minutes this job may use on this day, when the day has so many. */
export const minutesOpen = (job: BenchJob, day: number, minutes: number): number =>
  day === job.closes && job.closesAfter !== undefined ? Math.min(job.closesAfter, minutes) : minutes;
