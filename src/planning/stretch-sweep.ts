// One sweep from the last day to the first sees the room of every stretch of days: from an opening day to a closing moment. Prepared once for a set of jobs, it
// runs quickly for many benches.

import type { BenchJob, DayMinutes } from './bench-job.ts';
import { slackRow } from './least-slack.ts';

/** A moment at which some job closes. */
export interface Closing {
  readonly day: number;
  readonly after: number; // minutes of that day that count; infinite when all do
}

/** Of the stretches that begin on the day visited and close at or after a place: the least room, and at which closing. */
export interface LeastRoom {
  from(place: number): number;
  where(place: number): number;
}

export interface Sweep {
  readonly closings: readonly Closing[]; // earliest first
  readonly places: readonly number[]; // by job, its closing
  run(days: DayMinutes, visit: (day: number, least: LeastRoom) => void): void;
}

export const stretchSweep = (jobs: readonly BenchJob[]): Sweep => {
  const order = jobs.map((_, index) => index).sort((a, b) => byMoment(jobs[a] as BenchJob, jobs[b] as BenchJob));
  const closings: Closing[] = [];
  const places: number[] = jobs.map(() => 0);
  for (const index of order) {
    const job = jobs[index] as BenchJob;
    const last = closings.at(-1);
    if (last?.day !== job.closes || last.after !== momentIn(job)) closings.push({ day: job.closes, after: momentIn(job) });
    places[index] = closings.length - 1;
  }
  const opening = jobs.map((_, index) => index).sort((a, b) => (jobs[b]?.opens ?? 0) - (jobs[a]?.opens ?? 0));
  return {
    closings,
    places,
    run: (days, visit) => {
      const row = slackRow(closings.length);
      let next = 0;
      let first = closings.length; // the first closing on or after the day visited
      const least: LeastRoom = {
        from: (place) => row.leastFrom(Math.max(first, place)),
        where: (place) => row.whereLeast(Math.max(first, place)),
      };
      for (let day = days.length - 1; day >= 0; day -= 1) {
        const minutes = days[day] ?? 0;
        row.addFrom(first, minutes);
        for (; first > 0 && (closings[first - 1] as Closing).day >= day; first -= 1) {
          row.setAt(first - 1, Math.min(minutes, (closings[first - 1] as Closing).after));
        }
        for (; next < opening.length; next += 1) {
          const index = opening[next] as number;
          const job = jobs[index] as BenchJob;
          if (job.opens < day) break;
          row.addFrom(places[index] as number, -job.minutes);
        }
        visit(day, least);
      }
    },
  };
};

const momentIn = (job: BenchJob): number => job.closesAfter ?? Number.POSITIVE_INFINITY;

const byMoment = (a: BenchJob, b: BenchJob): number => {
  if (a.closes !== b.closes) return a.closes - b.closes;
  return momentIn(a) === momentIn(b) ? 0 : momentIn(a) < momentIn(b) ? -1 : 1;
};
