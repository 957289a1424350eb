// How full each day may be. Every day stays at the comfortable share where that is possible; where it is not, only the stretches that need more are raised,
// evenly, and never over the days' own minutes. The jobs given must fit into the whole days.

import { comfortableShare } from '../handbook/make-ahead.ts';
import type { BenchJob, DayMinutes } from './bench-job.ts';
import { stretchSweep } from './stretch-sweep.ts';
import { type Stretch, shortStretches } from './stretches.ts';

const evenRounds = 16; // after these, what is still short is opened fully, so that the work ends
const noise = 1e-9;

export const comfortable = (minutes: number): number => (minutes * comfortableShare.percent) / 100;

export const dayLimits = (jobs: readonly BenchJob[], days: DayMinutes): DayMinutes => {
  const limits = days.map(comfortable);
  const sweep = stretchSweep(jobs);
  for (let round = 0; ; round += 1) {
    const short = shortStretches(sweep, limits);
    if (short.length === 0) return limits;
    let raised = 0;
    for (const stretch of round < evenRounds ? apart(short) : short) raised += raise(stretch, days, limits, round < evenRounds);
    if (raised > noise) continue;
    for (const stretch of short) raised += raise(stretch, days, limits, false);
    if (raised <= noise) return limits; // every day concerned is open fully: what is left is rounding noise
  }
};

/** The tightest stretches that share no day, so that one round serves every busy week. */
const apart = (short: readonly Stretch[]): readonly Stretch[] => {
  const taken: Stretch[] = [];
  for (const stretch of [...short].sort((a, b) => b.short - a.short)) {
    if (taken.every((one) => one.to < stretch.from || one.from > stretch.to)) taken.push(stretch);
  }
  return taken;
};

/** Raises the limits of a stretch until it has room, or fully; gives the minutes won. */
const raise = (stretch: Stretch, days: DayMinutes, limits: number[], evenly: boolean): number => {
  let whole = 0;
  let now = 0;
  for (let day = stretch.from; day <= stretch.to; day += 1) {
    whole += days[day] ?? 0;
    now += limits[day] ?? 0;
  }
  const share = evenly && whole > 0 ? Math.min(1, (now + stretch.short) / whole) : 1;
  let won = 0;
  for (let day = stretch.from; day <= stretch.to; day += 1) {
    const before = limits[day] ?? 0;
    limits[day] = Math.max(before, (days[day] ?? 0) * share);
    won += (limits[day] ?? 0) - before;
  }
  return won;
};
