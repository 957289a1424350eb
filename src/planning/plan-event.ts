// What one event may count on, taken out of the plan of the whole bench: its dates, its days, its calendar.

import type { PieceKind } from '../handbook/pieces.ts';
import { type BenchJob, slightly } from './bench-job.ts';
import type { EventDay, EventPlan } from './bench-plan.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import type { EventToPlan } from './event-to-plan.ts';
import { makeAheadCalendar } from './make-ahead-calendar.ts';
import type { PieceWindows } from './piece-windows.ts';
import type { PiecesOnDay } from './whole-pieces.ts';
import type { WorkingDays } from './working-days.ts';

export interface EventParts {
  readonly event: EventToPlan;
  readonly windows: readonly PieceWindows[]; // by line
  readonly allJobs: readonly BenchJob[]; // `work` points into these
  readonly jobs: readonly BenchJob[]; // this event's
  readonly work: readonly PiecesOnDay[]; // this event's, by day
  readonly short: number; // minutes that fit nowhere
  readonly latest: number | undefined; // days from today
  readonly isFull: (day: number) => boolean; // over the comfortable share
  readonly days: WorkingDays;
  readonly rules: BenchRules;
  readonly now: number;
}

export const planEvent = (parts: EventParts): EventPlan => {
  const { event, windows, allJobs, jobs, work, short, latest, isFull, days, rules, now } = parts;
  const fits = short <= slightly;
  const first = work[0]?.day;
  const easy = fits && !work.some((share) => isFull(share.day));
  const stages = windows.flatMap((pieces) => pieces.stages.map(({ window }) => window));
  const ahead = Math.max(0, ...stages.map((window) => window.hoursAhead ?? 0));
  const eventDays = daysOf(work, allJobs, now);
  const latestStart = fits ? latest : undefined;
  let calendar: EventPlan['calendar'] | undefined;
  return {
    key: event.key,
    event,
    minutesPlanned: tidy(event.lines.reduce((total, line) => total + line.ordered * line.minutesEach, 0)),
    minutesLeft: tidy(jobs.reduce((total, job) => total + job.minutes, 0)),
    minutesShort: fits ? 0 : tidy(short),
    fits,
    opens: dayNumbered(days.onOrAfter(Math.min(...stages.map((window) => window.opens)))),
    boarded: dayNumbered(Math.max(...windows.map((pieces) => pieces.boarded))),
    handOver: dayNumbered(windows[0]?.handOver.day ?? dayNumber(event.date)),
    ...(easy && first !== undefined ? { comfortableStart: dayNumbered(now + first) } : {}),
    ...(latestStart === undefined ? {} : { latestStart: dayNumbered(now + latestStart) }),
    days: eventDays,
    late: jobs.some((job) => job.late),
    ...(ahead > 0 ? { hoursAhead: ahead } : {}),
    materialAssumed: event.lines.some((line) => line.materialAssumed),
    // Worked out when somebody looks: a reply shows one event's calendar, and the bench may hold a thousand events.
    get calendar() {
      calendar ??= makeAheadCalendar({ event, windows, work, jobs: allJobs, eventDays, latestStart, rules, days, now });
      return calendar;
    },
  };
};

/** Minutes without rounding noise: to a hundredth. */
export const tidy = (minutes: number): number => Math.round(minutes * 100) / 100;

const daysOf = (work: readonly PiecesOnDay[], jobs: readonly BenchJob[], now: number): readonly EventDay[] => {
  const days = new Map<number, { minutes: number; pieces: { [piece in PieceKind]?: number }; bases: { [piece in PieceKind]?: number } }>();
  for (const share of work) {
    const job = jobs[share.job] as BenchJob;
    const day = days.get(share.day) ?? { minutes: 0, pieces: {}, bases: {} };
    day.minutes += share.minutes;
    const counted = job.stage === 'base' ? day.bases : day.pieces;
    if (share.pieces > 0) counted[job.piece] = (counted[job.piece] ?? 0) + share.pieces;
    days.set(share.day, day);
  }
  return [...days].map(([day, { minutes, ...counts }]) => ({ date: dayNumbered(now + day), minutes: tidy(minutes), ...counts }));
};
