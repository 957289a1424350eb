// What would make an overloaded bench fit. Each cure is tried on the whole bench before it is offered: it is enough by itself.

import { freshHoursAhead, keepingDaysAhead } from '../handbook/make-ahead.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import { type BenchJob, slightly } from './bench-job.ts';
import { type BenchLoad, benchLoad } from './bench-load.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumbered } from './day-number.ts';
import { fillEarliest } from './earliest-deadline.ts';
import type { EventToPlan } from './event-to-plan.ts';
import { extraHours, withExtra } from './extra-hours.ts';
import { pieceWindows } from './piece-windows.ts';
import { leadDays } from './supply.ts';
import type { WorkingDays } from './working-days.ts';

export interface PiecesOf {
  readonly key: string;
  readonly line: number; // its place in the order
  readonly piece: PieceKind;
  readonly pieces: number;
  readonly keeps: number; // pieces of that line that do fit as they are
}

export type Cure =
  | { readonly cure: 'add hours'; readonly minutes: number; readonly on: readonly { readonly date: Day; readonly minutes: number }[] }
  | { readonly cure: 'board later'; readonly workingDaysBefore: number } // work that keeps, closer to its event
  | { readonly cure: 'make fresh earlier'; readonly keys: readonly string[]; readonly days: number; readonly hoursAhead: number }
  | { readonly cure: 'move to dried'; readonly moves: readonly PiecesOf[] } // bought ready dried, as it arrives
  | { readonly cure: 'fewer pieces'; readonly drops: readonly PiecesOf[] };

const fits = (jobs: readonly BenchJob[], days: readonly number[]): boolean => fillEarliest(jobs, days).minutesShort <= slightly;

export const findCures = (
  events: readonly EventToPlan[],
  load: BenchLoad,
  rules: BenchRules,
  days: WorkingDays,
  now: number,
): readonly Cure[] => {
  const { short } = fillEarliest(load.jobs, load.days);
  const all = [
    addHours(load, short, now),
    boardLater(events, rules, days, now),
    makeFreshEarlier(events, load, short),
    moveToDried(events, load, short, rules, days, now),
    fewerPieces(events, load, short),
  ];
  return all.filter((cure) => cure !== undefined);
};

const addHours = (load: BenchLoad, short: readonly number[], now: number): Cure | undefined => {
  for (const spread of [true, false]) {
    const extra = extraHours(load, short, spread);
    const more = withExtra(load, extra);
    if (!fits(more.jobs, more.days)) continue;
    const on = [...extra].sort(([a], [b]) => a - b).map(([day, minutes]) => ({ date: dayNumbered(now + day), minutes }));
    return { cure: 'add hours', minutes: on.reduce((total, one) => total + one.minutes, 0), on };
  }
  return undefined;
};

const boardLater = (events: readonly EventToPlan[], rules: BenchRules, days: WorkingDays, now: number): Cure | undefined => {
  for (let before = (rules.boardedDaysBefore ?? keepingDaysAhead.dried.boarded) - 1; before >= 0; before -= 1) {
    const later = benchLoad(events, { ...rules, boardedDaysBefore: before }, days, now);
    if (fits(later.jobs, later.days)) return { cure: 'board later', workingDaysBefore: before };
  }
  return undefined;
};

const makeFreshEarlier = (events: readonly EventToPlan[], load: BenchLoad, short: readonly number[]): Cure | undefined => {
  const tight = new Set(load.jobs.filter((job, index) => isShort(short, index) && job.material === 'fresh').map((job) => job.event));
  let moved = 0;
  let hoursAhead = 0;
  const jobs = load.jobs.map((job) => {
    const { usual, most } = freshHoursAhead[job.piece];
    const more = Math.ceil(most / 24) - Math.ceil(usual / 24);
    if (!tight.has(job.event) || job.material !== 'fresh' || more <= 0) return job;
    moved = Math.max(moved, more);
    hoursAhead = Math.max(hoursAhead, most);
    return { ...job, opened: job.opened - more, opens: Math.max(0, job.opens - more) };
  });
  if (moved === 0 || !fits(jobs, load.days)) return undefined;
  return { cure: 'make fresh earlier', keys: [...tight].map((event) => events[event]?.key ?? ''), days: moved, hoursAhead };
};

const isShort = (short: readonly number[], index: number): boolean => (short[index] ?? 0) > slightly;

/** Whole pieces to take off each job so that the rest fits. Both halves of a mixed piece lose as many. */
const tooMany = (load: BenchLoad, short: readonly number[]): ReadonlyMap<string, number> => {
  const lines = new Map<string, number>();
  load.jobs.forEach((job, index) => {
    if (!isShort(short, index)) return;
    const line = `${job.event}/${job.line}`;
    lines.set(line, Math.max(lines.get(line) ?? 0, Math.min(job.pieces, Math.ceil((short[index] ?? 0) / job.each - slightly))));
  });
  return lines;
};

const without = (jobs: readonly BenchJob[], off: ReadonlyMap<string, number>): readonly BenchJob[] =>
  jobs.map((job) => {
    const pieces = job.pieces - (off.get(`${job.event}/${job.line}`) ?? 0);
    return { ...job, pieces, minutes: pieces * job.each };
  });

const named = (events: readonly EventToPlan[], off: ReadonlyMap<string, number>): readonly PiecesOf[] =>
  [...off].map(([line, pieces]) => {
    const [event, index] = line.split('/').map(Number);
    const of = events[event ?? 0];
    const ordered = of?.lines[index ?? 0];
    return { key: of?.key ?? '', line: index ?? 0, piece: ordered?.piece ?? 'unspecified', pieces, keeps: (ordered?.left ?? 0) - pieces };
  });

const fewerPieces = (events: readonly EventToPlan[], load: BenchLoad, short: readonly number[]): Cure | undefined => {
  const off = tooMany(load, short);
  return fits(without(load.jobs, off), load.days) ? { cure: 'fewer pieces', drops: named(events, off) } : undefined;
};

const moveToDried = (
  events: readonly EventToPlan[],
  load: BenchLoad,
  short: readonly number[],
  rules: BenchRules,
  days: WorkingDays,
  now: number,
): Cure | undefined => {
  const off = tooMany(load, short);
  const moved: BenchJob[] = [];
  for (const [index, job] of load.jobs.entries()) {
    if (!isShort(short, index)) continue;
    const event = events[job.event];
    if (!event || job.material !== 'fresh') return undefined; // what is short keeps already: drying it again is no cure
    const pieces = off.get(`${job.event}/${job.line}`) ?? 0;
    const window = pieceWindows(event, job.piece, 'dried', rules, days, now).stages[0]?.window;
    const arrives = days.after(now, leadDays(event, rules).days) - now;
    if (!window || window.late || window.closes - now < arrives) return undefined;
    const closes = window.closes - now;
    const opens = Math.max(arrives, window.opens - now);
    moved.push({
      event: job.event,
      line: job.line,
      piece: job.piece,
      material: 'dried',
      stage: 'whole',
      each: job.each,
      pieces,
      minutes: pieces * job.each,
      opened: opens,
      opens,
      closes,
      late: false,
    });
  }
  return fits([...without(load.jobs, off), ...moved], load.days) ? { cure: 'move to dried', moves: named(events, off) } : undefined;
};
