// Who works on what on which day: filled from the last day back, the job that opened latest first. So fresh work takes its last day, dried work the slack
// before it, and a few pieces finished early only shorten the first days of the plan.

import { type BenchJob, type DayMinutes, minutesOpen, slightly } from './bench-job.ts';
import { newHeap } from './heap.ts';

/** Minutes of one job on one day. */
export interface Share {
  readonly day: number;
  readonly job: number;
  readonly minutes: number;
}

/** The shares in order of day, then of opening. The jobs given must fit into the limits; rounding noise is dropped. */
export const fillLatest = (jobs: readonly BenchJob[], limits: DayMinutes): readonly Share[] => {
  const left = jobs.map((job) => job.minutes);
  const closing = jobs.map((_, index) => index).sort((a, b) => laterMoment(jobs, a, b));
  const heap = newHeap((a, b) => opensLater(jobs, a, b));
  const shares: Share[] = [];
  let next = 0;
  for (let day = limits.length - 1; day >= 0; day -= 1) {
    const minutes = limits[day] ?? 0;
    const onDay = new Map<number, number>();
    let from = minutes; // we fill backwards from here
    for (;;) {
      for (; next < closing.length && startsBy(jobs[closing[next] as number] as BenchJob, day, minutes, from); next += 1) {
        heap.push(closing[next] as number);
      }
      const floor = nextClosing(jobs[closing[next] ?? -1], day, minutes);
      const index = heap.top();
      if (index === undefined || from <= floor) {
        if (floor <= 0) break;
        from = floor;
        continue;
      }
      const run = Math.min(left[index] ?? 0, from - floor);
      left[index] = (left[index] ?? 0) - run;
      from -= run;
      if (run > 0) onDay.set(index, (onDay.get(index) ?? 0) + run);
      if ((left[index] ?? 0) <= slightly) heap.pop();
    }
    while (heap.top() !== undefined && (jobs[heap.top() as number] as BenchJob).opens >= day) heap.pop();
    for (const [job, run] of onDay) if (run > slightly) shares.push({ day, job, minutes: run });
  }
  return shares.reverse();
};

// A job may be filled backwards from this minute of the day once its own closing minute is not before it.
const startsBy = (job: BenchJob, day: number, minutes: number, from: number): boolean =>
  job.closes > day || (job.closes === day && minutesOpen(job, day, minutes) >= from);

const nextClosing = (job: BenchJob | undefined, day: number, minutes: number): number =>
  job?.closes === day ? minutesOpen(job, day, minutes) : 0;

const laterMoment = (jobs: readonly BenchJob[], a: number, b: number): number => {
  const one = jobs[a] as BenchJob;
  const other = jobs[b] as BenchJob;
  const cut = one.closesAfter ?? Number.MAX_VALUE;
  const otherCut = other.closesAfter ?? Number.MAX_VALUE;
  return other.closes - one.closes || otherCut - cut || a - b;
};

const opensLater = (jobs: readonly BenchJob[], a: number, b: number): boolean => {
  const one = jobs[a] as BenchJob;
  const other = jobs[b] as BenchJob;
  if (one.opened !== other.opened) return one.opened > other.opened;
  if (one.closes !== other.closes) return one.closes > other.closes;
  return a > b; // the base of a mixed piece comes before its finish
};
