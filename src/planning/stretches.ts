// Every stretch of days must have room for the jobs that lie wholly inside it: that is the whole condition for a plan to exist.

import { type BenchJob, type DayMinutes, slightly } from './bench-job.ts';
import { type Closing, type Sweep, stretchSweep } from './stretch-sweep.ts';

export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly toAfter: number; // minutes of the last day that count; infinite when all do
  readonly short: number; // minutes missing
}

/** Whether a job lies wholly inside the stretch. */
export const isInside = (job: BenchJob, { from, to, toAfter }: Stretch): boolean =>
  job.opens >= from && (job.closes < to || (job.closes === to && (job.closesAfter ?? Number.POSITIVE_INFINITY) <= toAfter));

/** For each first day, latest first, the stretch that lacks most minutes, if any lacks some. */
export const shortStretches = (sweep: Sweep, days: DayMinutes): readonly Stretch[] => {
  const found: Stretch[] = [];
  sweep.run(days, (day, least) => {
    const amount = least.from(0);
    if (amount >= -slightly) return;
    const { day: to, after: toAfter } = sweep.closings[least.where(0)] as Closing;
    found.push({ from: day, to, toAfter, short: -amount });
  });
  return found;
};

/** The stretch of days that lacks most minutes, the shortest such; undefined when everything fits. */
export const tightestStretch = (jobs: readonly BenchJob[], days: DayMinutes): Stretch | undefined =>
  shortStretches(stretchSweep(jobs), days).reduce<Stretch | undefined>(
    (tightest, one) => (tightest && one.short <= tightest.short + slightly ? tightest : one),
    undefined,
  );
