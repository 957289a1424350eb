// Days that hold whole pieces: the part of a piece that a filled day has too much goes to an earlier day, where other parts make it whole. No day gets more than
// its limit and no piece leaves its window. Only where the bench is too full for that does a piece stay begun on one day and finished on the next.

import { type BenchJob, type DayMinutes, slightly } from './bench-job.ts';
import type { Share } from './latest-fill.ts';

const mostRounds = 24; // each leaves some jobs as they were; after these, all

/** The shares in order of day, with the same minutes for each job. The shares given must keep to the limits. */
export const wholeDays = (jobs: readonly BenchJob[], limits: DayMinutes, shares: readonly Share[]): readonly Share[] => {
  const asFilled = new Set<number>(); // jobs that keep their parts of pieces
  const byDay = sharesByDay(shares);
  const before = openDaysBefore(limits);
  for (let round = 0; round < mostRounds; round += 1) {
    const moved = moveParts({ jobs, limits, byDay, before, asFilled });
    if (moved.stuck.length === 0) return moved.shares;
    for (const job of moved.stuck) asFilled.add(job);
  }
  return shares;
};

interface Filled {
  readonly jobs: readonly BenchJob[];
  readonly limits: DayMinutes;
  readonly byDay: ReadonlyMap<number, readonly Share[]>;
  readonly before: readonly number[]; // by day, the last day before it with minutes; -1 for none
  readonly asFilled: ReadonlySet<number>;
}

/** From the last day back; what a day does not take is carried to the one before. */
const moveParts = ({ jobs, limits, byDay, before, asFilled }: Filled): { shares: readonly Share[]; stuck: readonly number[] } => {
  const carried = new Map<number, number>(); // minutes by job
  const placed: Share[] = [];
  for (let day = limits.length - 1; day >= 0; day -= 1) {
    const onDay = byDay.get(day) ?? [];
    if (onDay.length === 0 && (carried.size === 0 || (limits[day] ?? 0) <= slightly)) continue;
    const wanted = new Map<number, number>();
    const kept = onDay.filter(({ job }) => asFilled.has(job));
    for (const { job, minutes } of onDay) if (!asFilled.has(job)) wanted.set(job, minutes);
    for (const [job, minutes] of carried) wanted.set(job, (wanted.get(job) ?? 0) + minutes);
    const room = (limits[day] ?? 0) - kept.reduce((total, { minutes }) => total + minutes, 0);
    const canWait = (job: number): boolean => (before[day] ?? -1) >= (jobs[job] as BenchJob).opens;
    const { pieces, stuck } = fitWhole(jobs, wanted, room, canWait);
    if (stuck.length > 0) return { shares: [], stuck };
    for (const share of kept.toReversed()) placed.push(share);
    for (const [job, minutes] of [...wanted].reverse()) {
      const now = (pieces.get(job) ?? 0) * (jobs[job] as BenchJob).each;
      if (now > slightly) placed.push({ day, job, minutes: now });
      const rest = minutes - now;
      if (rest > slightly) carried.set(job, rest);
      else carried.delete(job);
    }
  }
  return { shares: placed.reverse(), stuck: [...carried.keys()] };
};

/** Whole pieces for one day; those that may be made earlier give way first, the ones open longest before the others. */
const fitWhole = (
  jobs: readonly BenchJob[],
  wanted: ReadonlyMap<number, number>,
  room: number,
  canWait: (job: number) => boolean,
): { pieces: ReadonlyMap<number, number>; stuck: readonly number[] } => {
  const pieces = new Map<number, number>();
  const stuck: number[] = [];
  let used = 0;
  for (const [job, minutes] of wanted) {
    const { each } = jobs[job] as BenchJob;
    const whole = Math.floor((minutes + slightly) / each);
    pieces.set(job, whole);
    used += whole * each;
    if (minutes - whole * each > slightly && !canWait(job)) stuck.push(job);
  }
  const waiting = [...wanted.keys()].filter(canWait).sort((a, b) => (jobs[a] as BenchJob).opens - (jobs[b] as BenchJob).opens);
  for (const job of waiting) {
    const { each } = jobs[job] as BenchJob;
    const less = Math.min(pieces.get(job) ?? 0, Math.max(0, Math.ceil((used - room - slightly) / each)));
    pieces.set(job, (pieces.get(job) ?? 0) - less);
    used -= less * each;
  }
  return { pieces, stuck: used > room + slightly ? [...wanted.keys()] : stuck };
};

const sharesByDay = (shares: readonly Share[]): ReadonlyMap<number, readonly Share[]> => {
  const days = new Map<number, Share[]>();
  for (const share of shares) {
    const on = days.get(share.day);
    if (on) on.push(share);
    else days.set(share.day, [share]);
  }
  return days;
};

const openDaysBefore = (limits: DayMinutes): readonly number[] => {
  let last = -1;
  return limits.map((minutes, day) => {
    const before = last;
    if (minutes > slightly) last = day;
    return before;
  });
};
