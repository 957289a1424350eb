// What the calendar of one event is made from, and the plainest of its steps.

import type { Source } from '../handbook/sources.ts';
import type { BenchJob } from './bench-job.ts';
import type { EventDay } from './bench-plan.ts';
import type { BenchRules } from './bench-rules.ts';
import type { CalendarStep, StepGrade } from './calendar-step.ts';
import { dayNumbered } from './day-number.ts';
import type { EventToPlan } from './event-to-plan.ts';
import type { Share } from './latest-fill.ts';
import type { PieceWindows } from './piece-windows.ts';
import type { WorkingDays } from './working-days.ts';

export interface CalendarParts {
  readonly event: EventToPlan;
  readonly windows: readonly PieceWindows[]; // by line
  readonly jobs: readonly BenchJob[]; // all the bench's; `work` points into it
  readonly work: readonly Share[]; // this event's
  readonly eventDays: readonly EventDay[];
  readonly latestStart: number | undefined; // days from today
  readonly rules: BenchRules;
  readonly days: WorkingDays;
  readonly now: number;
}

export const plainStep = (
  { now }: CalendarParts,
  step: CalendarStep['step'],
  day: number,
  done: boolean,
  about: { grade: StepGrade; sources: readonly Source[] } & Partial<CalendarStep>,
): CalendarStep => {
  const late = day < now && !done;
  const canStill = late ? [{ do: 'do it today' } as const] : [];
  return { step, date: dayNumbered(day), late, done, assumed: false, canStill, ...about };
};
