// How full each day may be. Every day stays at the comfortable share where that is possible; where it is not, only the stretch that needs more is raised,
// evenly, and never over the day's own minutes. The jobs given must fit into the whole days.

import { comfortableShare } from '../handbook/make-ahead.ts';
import type { BenchJob, DayMinutes } from './bench-job.ts';
import { tightestStretch } from './stretches.ts';

const evenRaises = 24; // after these a stretch is opened fully, so that the work ends

export const comfortable = (minutes: number): number => (minutes * comfortableShare.percent) / 100;

export const dayLimits = (jobs: readonly BenchJob[], days: DayMinutes): DayMinutes => {
  const limits = days.map(comfortable);
  for (let raise = 0; ; raise += 1) {
    const tight = tightestStretch(jobs, limits);
    if (!tight) return limits;
    let whole = 0;
    let now = 0;
    for (let day = tight.from; day <= tight.to; day += 1) {
      whole += days[day] ?? 0;
      now += limits[day] ?? 0;
    }
    const share = raise < evenRaises && whole > 0 ? Math.min(1, (now + tight.short) / whole) : 1;
    let raised = 0;
    for (let day = tight.from; day <= tight.to; day += 1) {
      const before = limits[day] ?? 0;
      const after = Math.max(before, (days[day] ?? 0) * share);
      limits[day] = after;
      raised += after - before;
    }
    if (raised > 1e-9) continue;
    if (now >= whole - 1e-9) return limits; // nothing left to raise: rounding noise
    for (let day = tight.from; day <= tight.to; day += 1) limits[day] = days[day] ?? 0;
  }
};
