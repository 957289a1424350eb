// Earliest deadline first on one pooled bench: each minute goes to the open job that closes soonest. What it cannot place, no plan can
// (for one resource and interval windows this greedy filling is a largest one), so its shortage is exact and its verdict final.

import { type BenchJob, type DayMinutes, minutesOpen, slightly } from './bench-job.ts';
import { newHeap } from './heap.ts';

export interface Filling {
  readonly short: readonly number[]; // minutes of each job that fit nowhere
  readonly minutesShort: number;
}

export const fillEarliest = (jobs: readonly BenchJob[], days: DayMinutes): Filling => {
  const left = jobs.map((job) => job.minutes);
  const short = jobs.map(() => 0);
  const waiting = jobs.map((_, index) => index).sort((a, b) => opens(jobs, a) - opens(jobs, b));
  const heap = newHeap((a, b) => closesSooner(jobs, a, b));
  let next = 0;
  const giveUp = (index: number): void => {
    short[index] = left[index] ?? 0;
    heap.pop();
  };
  for (let day = 0; day < days.length; day += 1) {
    for (; next < waiting.length && opens(jobs, waiting[next] ?? 0) <= day; next += 1) heap.push(waiting[next] ?? 0);
    const minutes = days[day] ?? 0;
    let used = 0;
    for (let index = heap.top(); index !== undefined; index = heap.top()) {
      const job = jobs[index] as BenchJob;
      if (job.closes < day) {
        giveUp(index);
        continue;
      }
      const run = Math.min(left[index] ?? 0, minutesOpen(job, day, minutes) - used);
      if (run > 0) {
        left[index] = (left[index] ?? 0) - run;
        used += run;
      }
      if ((left[index] ?? 0) <= slightly) heap.pop();
      else if (job.closes === day) giveUp(index);
      else break; // the day is full
    }
  }
  for (let index = heap.top(); index !== undefined; index = heap.top()) giveUp(index);
  for (; next < waiting.length; next += 1) short[waiting[next] ?? 0] = left[waiting[next] ?? 0] ?? 0;
  return { short, minutesShort: short.reduce((total, minutes) => total + minutes, 0) };
};

const opens = (jobs: readonly BenchJob[], index: number): number => jobs[index]?.opens ?? 0;

const closesSooner = (jobs: readonly BenchJob[], a: number, b: number): boolean => {
  const one = jobs[a] as BenchJob;
  const other = jobs[b] as BenchJob;
  if (one.closes !== other.closes) return one.closes < other.closes;
  const cut = one.closesAfter ?? Number.POSITIVE_INFINITY;
  const otherCut = other.closesAfter ?? Number.POSITIVE_INFINITY;
  return cut === otherCut ? a < b : cut < otherCut;
};
