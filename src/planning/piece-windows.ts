// When the pieces of one event may be made: from `opens` to `closes`, by material. A morning event closes the day before; a later one two hours before
// the pieces are handed over. Windows that have already closed stay open until the event itself, marked late, so that the plan says what can still be done.

import { boardedBeforeHandOver, freshHoursAhead, handOverBeforeEvent, keepingDaysAhead } from '../handbook/make-ahead.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumber } from './day-number.ts';
import type { EventToPlan } from './event-to-plan.ts';
import type { WorkingDays } from './working-days.ts';

export interface HandOver {
  readonly day: number; // the day of an hour that was said, else a working day on or before the day that was said
  readonly clock?: number; // minutes after midnight
  readonly assumed: boolean;
  readonly movedFrom?: number; // the closed day it should have been
}

export interface Window {
  readonly opens: number; // day numbers
  readonly closes: number;
  readonly closesAfter?: number; // only so many bench minutes of the closing day count
  readonly late: boolean; // it should have closed before today
  readonly hoursAhead?: number; // fresh work only, where no bench day is near enough: how long the pieces must keep
}

export interface PieceWindows {
  readonly handOver: HandOver;
  readonly boarded: number;
  /** One window; a mixed piece has two, base first. */
  readonly stages: readonly { readonly stage: 'whole' | 'base' | 'finish'; readonly window: Window }[];
}

const noon = 12 * 60;

export const clockMinutes = (time: string | undefined): number | undefined =>
  time === undefined ? undefined : Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

export const handOverOf = (event: EventToPlan, days: WorkingDays): HandOver => {
  const start = clockMinutes(event.time);
  const saidClock = clockMinutes(event.handOver?.time);
  const date = dayNumber(event.date);
  const day = event.handOver?.date === undefined ? date : Math.min(date, dayNumber(event.handOver.date));
  const workingDay = days.onOrBefore(day);
  // An hour that was said is of the day it was said for: somebody will be there, bench or none.
  if (workingDay !== day && saidClock !== undefined) return { day, clock: saidClock, assumed: false };
  if (workingDay !== day) return { day: workingDay, assumed: event.handOver?.date === undefined, movedFrom: day };
  if (saidClock !== undefined) return { day, clock: saidClock, assumed: false };
  if (event.handOver?.date !== undefined && day < date) return { day, assumed: true }; // at the end of that day
  // Nobody said when: before the bench opens, unless the event starts after noon.
  const clock = start !== undefined && start >= noon ? start - handOverBeforeEvent.hours * 60 : 0;
  return { day, clock, assumed: true };
};

export const pieceWindows = (
  event: EventToPlan,
  piece: PieceKind,
  material: Material,
  rules: BenchRules,
  days: WorkingDays,
  today: number,
): PieceWindows => {
  const date = dayNumber(event.date);
  const handOver = handOverOf(event, days);
  const freshClose = freshCloses(handOver, days);
  const fresh = freshWindow(event, piece, freshClose, days, today);
  if (material === 'fresh') return { handOver, boarded: freshClose.day, stages: [{ stage: 'whole', window: fresh }] };

  const keeping = keepingDaysAhead[material];
  const opens = date - (rules.opensDaysBefore ?? keeping.opens);
  const saidDay = Math.min(date, handOver.movedFrom ?? handOver.day);
  const boarded = Math.min(days.before(saidDay, rules.boardedDaysBefore ?? keeping.boarded), freshClose.day);
  if (material === 'mixed') {
    const closes = Math.min(boarded, days.before(fresh.opens, 1));
    const base = closes >= today ? { opens: Math.min(opens, closes), closes, late: false } : { ...fresh, opens, late: true };
    const stages = [{ stage: 'base', window: base } as const, { stage: 'finish', window: fresh } as const];
    return { handOver, boarded: freshClose.day, stages };
  }
  const whole =
    boarded >= today
      ? { opens: Math.min(opens, boarded), closes: boarded, late: false }
      : { ...lastChance(event, freshClose, days, today), opens };
  return { handOver, boarded, stages: [{ stage: 'whole', window: whole }] };
};

interface Closing {
  readonly day: number;
  readonly after?: number;
}

const freshCloses = (handOver: HandOver, days: WorkingDays): Closing => {
  if (handOver.clock === undefined) return { day: handOver.day };
  const after = days.minutesBy(handOver.day, handOver.clock - boardedBeforeHandOver.hours * 60);
  return after > 0 ? { day: handOver.day, after } : { day: days.before(handOver.day, 1) };
};

const freshWindow = (event: EventToPlan, piece: PieceKind, close: Closing, days: WorkingDays, today: number): Window => {
  const date = dayNumber(event.date);
  const ahead = freshHoursAhead[piece];
  const asUsual = date - Math.ceil(ahead.usual / 24);
  if (close.day < today) return { ...lastChance(event, close, days, today), opens: Math.min(asUsual, today) };
  const opens = Math.min(asUsual, close.day);
  return {
    opens,
    closes: close.day,
    ...(close.after === undefined ? {} : { closesAfter: close.after }),
    late: false,
    ...(opens < asUsual ? { hoursAhead: (date - opens) * 24 } : {}),
  };
};

// The boarding day is behind us: what is left is every bench minute until the pieces are needed.
const lastChance = (event: EventToPlan, close: Closing, days: WorkingDays, today: number): Omit<Window, 'opens'> => {
  const late = { late: true } as const;
  if (close.day >= today) return { closes: close.day, ...(close.after === undefined ? {} : { closesAfter: close.after }), ...late };
  const date = dayNumber(event.date);
  const start = clockMinutes(event.time);
  return { closes: date, ...(start === undefined ? {} : { closesAfter: days.minutesBy(date, start) }), ...late };
};
