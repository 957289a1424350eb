// Plans all open events on the one bench: is there a plan at all, how late may each event start, and what each day holds. Pure: today comes in.

import type { Day } from '../values/day.ts';
import { type BenchJob, slightly } from './bench-job.ts';
import { type BenchLoad, benchLoad } from './bench-load.ts';
import type { BenchPlan, DayPlan, EventPlan, TightStretch } from './bench-plan.ts';
import type { BenchRules } from './bench-rules.ts';
import { findCures } from './cures.ts';
import { comfortable, dayLimits } from './day-limits.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import { fillEarliest } from './earliest-deadline.ts';
import type { EventToPlan } from './event-to-plan.ts';
import { jobsThatFit } from './jobs-that-fit.ts';
import { fillLatest } from './latest-fill.ts';
import { latestStarts } from './latest-starts.ts';
import { planEvent, tidy } from './plan-event.ts';
import { isInside, tightestStretch } from './stretches.ts';
import { wholeDays } from './whole-days.ts';
import { type PiecesOnDay, wholePieces } from './whole-pieces.ts';
import { workingDays } from './working-days.ts';

const furthestAhead = 1100; // days: three years

export const planBench = (events: readonly EventToPlan[], rules: BenchRules, today: Day): BenchPlan => {
  const now = dayNumber(today);
  const days = workingDays(rules);
  const { planned, notPlanned } = sortOut(events, now);
  const load = benchLoad(planned, rules, days, now);
  const { short, minutesShort } = fillEarliest(load.jobs, load.days);
  const placed = jobsThatFit(load.jobs, short);
  const limits = dayLimits(placed, load.days);
  const work = wholePieces(placed, wholeDays(placed, limits, fillLatest(placed, limits)));
  const fits = minutesShort <= slightly;
  const tight = fits ? undefined : tightStretch(load, planned, now);
  const dayPlans = plansByDay(work, load, planned, now);
  const byEvent = perEvent(planned.length, load, work, short);
  const full = new Set(dayPlans.filter((day) => day.full).map((day) => dayNumber(day.date) - now));
  const common = { allJobs: load.jobs, isFull: (day: number) => full.has(day), days, rules, now };
  const planOf = (event: EventToPlan, index: number, latest: number | undefined): EventPlan =>
    planEvent({ ...common, event, ...(byEvent[index] as Mine), latest, windows: load.windows[index] ?? [] });
  const single = new Map<string, EventPlan | undefined>();
  let all: readonly EventPlan[] | undefined;
  return {
    today,
    rules,
    fits,
    minutesShort: fits ? 0 : tidy(minutesShort),
    nobodyAtTheBench: load.jobs.length > 0 && load.days.every((minutes) => minutes === 0),
    days: dayPlans,
    // Each reply is about one event of perhaps a thousand, so none is worked out before somebody looks.
    get events() {
      if (!all) {
        const latest = latestStarts(placed, load.days);
        all = planned.map((event, index) => planOf(event, index, latest.get(index)));
        for (const event of all) single.set(event.key, event);
      }
      return all;
    },
    of: (key) => {
      if (!single.has(key)) {
        const index = planned.findIndex((event) => event.key === key);
        const event = planned[index];
        single.set(key, event && planOf(event, index, latestStarts(placed, load.days, index).get(index)));
      }
      return single.get(key);
    },
    ...(tight ? { tight } : {}),
    cures: fits ? [] : findCures(planned, load, rules, days, now),
    notPlanned,
  };
};

const sortOut = (events: readonly EventToPlan[], now: number): { planned: readonly EventToPlan[]; notPlanned: BenchPlan['notPlanned'] } => {
  const planned: EventToPlan[] = [];
  const notPlanned: { key: string; why: 'past' | 'too far ahead' }[] = [];
  for (const event of events) {
    const date = dayNumber(event.date);
    if (date < now) notPlanned.push({ key: event.key, why: 'past' });
    else if (date > now + furthestAhead) notPlanned.push({ key: event.key, why: 'too far ahead' });
    else planned.push(event);
  }
  planned.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return { planned, notPlanned };
};

const tightStretch = (load: BenchLoad, events: readonly EventToPlan[], now: number): TightStretch | undefined => {
  const found = tightestStretch(load.jobs, load.days);
  if (!found) return undefined;
  const inside = load.jobs.filter((job) => isInside(job, found));
  const needed = inside.reduce((total, job) => total + job.minutes, 0);
  return {
    from: dayNumbered(now + found.from),
    to: dayNumbered(now + found.to),
    minutesNeeded: tidy(needed),
    minutesThere: tidy(needed - found.short),
    minutesShort: tidy(found.short),
    keys: [...new Set(inside.map((job) => events[job.event]?.key ?? ''))],
  };
};

const plansByDay = (work: readonly PiecesOnDay[], load: BenchLoad, events: readonly EventToPlan[], now: number): readonly DayPlan[] => {
  const days = new Map<number, PiecesOnDay[]>();
  for (const share of work) {
    const on = days.get(share.day);
    if (on) on.push(share);
    else days.set(share.day, [share]);
  }
  return [...days].map(([day, shares]) => {
    const capacity = load.days[day] ?? 0;
    const minutes = shares.reduce((total, share) => total + share.minutes, 0);
    return {
      date: dayNumbered(now + day),
      minutes: tidy(minutes),
      capacity,
      full: minutes > comfortable(capacity) + slightly,
      tasks: shares.map((share) => {
        const job = load.jobs[share.job] as BenchJob;
        const { line, piece, material, stage } = job;
        return { key: events[job.event]?.key ?? '', line, piece, material, stage, minutes: tidy(share.minutes), pieces: share.pieces };
      }),
    };
  });
};

interface Mine {
  readonly jobs: BenchJob[];
  readonly work: PiecesOnDay[];
  short: number;
}

const perEvent = (count: number, load: BenchLoad, work: readonly PiecesOnDay[], short: readonly number[]): readonly Mine[] => {
  const all: Mine[] = Array.from({ length: count }, () => ({ jobs: [], work: [], short: 0 }));
  load.jobs.forEach((job, index) => {
    const mine = all[job.event] as Mine;
    mine.jobs.push(job);
    mine.short += short[index] ?? 0;
  });
  for (const share of work) all[load.jobs[share.job]?.event ?? 0]?.work.push(share);
  return all;
};
