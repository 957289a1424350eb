// Every stretch of days, from an opening day to a closing moment, must have room for the jobs that lie wholly inside it: that is the whole condition for a
// plan to exist. One sweep from the last day to the first sees them all, and tells the tightest stretch and how late each event may start.

import { type BenchJob, type DayMinutes, slightly } from './bench-job.ts';
import { slackRow } from './least-slack.ts';

export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly toAfter: number; // minutes of the last day that count; infinite when all do
  readonly short: number; // minutes missing
}

/** Whether a job lies wholly inside the stretch. */
export const isInside = (job: BenchJob, { from, to, toAfter }: Stretch): boolean =>
  job.opens >= from && (job.closes < to || (job.closes === to && (job.closesAfter ?? Number.POSITIVE_INFINITY) <= toAfter));

interface Closing {
  readonly day: number;
  readonly after: number; // minutes of that day
}

/** Visits each day, last first; `least(place)` answers for stretches that begin on it and close at or after the place. */
const sweep = (
  jobs: readonly BenchJob[],
  days: DayMinutes,
  visit: (day: number, least: (place: number) => { readonly place: number; readonly amount: number }) => void,
): void => {
  const { closings, placeOf } = closingsOf(jobs);
  const row = slackRow(closings.length);
  const opening = jobs.map((_, index) => index).sort((a, b) => (jobs[b]?.opens ?? 0) - (jobs[a]?.opens ?? 0));
  let next = 0;
  let first = closings.length; // the first closing on or after the day visited
  for (let day = days.length - 1; day >= 0; day -= 1) {
    const minutes = days[day] ?? 0;
    row.addFrom(first, minutes);
    for (; first > 0 && (closings[first - 1] as Closing).day >= day; first -= 1) {
      row.setAt(first - 1, Math.min(minutes, (closings[first - 1] as Closing).after));
    }
    for (; next < opening.length; next += 1) {
      const job = jobs[opening[next] as number] as BenchJob;
      if (job.opens < day) break;
      row.addFrom(placeOf(job), -job.minutes);
    }
    visit(day, (place) => row.leastFrom(Math.max(first, place)));
  }
};

const momentOf = (job: BenchJob): string => `${job.closes}/${job.closesAfter ?? ''}`;

const closingsOf = (jobs: readonly BenchJob[]): { closings: readonly Closing[]; placeOf: (job: BenchJob) => number } => {
  const moments = new Map<string, Closing>();
  for (const job of jobs) moments.set(momentOf(job), { day: job.closes, after: job.closesAfter ?? Number.POSITIVE_INFINITY });
  const sorted = [...moments].sort(([, a], [, b]) => a.day - b.day || a.after - b.after);
  const places = new Map(sorted.map(([moment], place) => [moment, place]));
  return { closings: sorted.map(([, closing]) => closing), placeOf: (job) => places.get(momentOf(job)) ?? 0 };
};

/** The stretch of days that lacks most minutes, the shortest such; undefined when everything fits. */
export const tightestStretch = (jobs: readonly BenchJob[], days: DayMinutes): Stretch | undefined => {
  const { closings } = closingsOf(jobs);
  let tightest: Stretch | undefined;
  sweep(jobs, days, (day, least) => {
    const { place, amount } = least(0);
    if (amount < -slightly && amount < -(tightest?.short ?? 0) - slightly) {
      const { day: to, after: toAfter } = closings[place] as Closing;
      tightest = { from: day, to, toAfter, short: -amount };
    }
  });
  return tightest;
};

/**
 * For each event the latest day all its jobs may start while everything still fits, every other event being free to move. The jobs given must fit.
 * One day later, some stretch that begins there has no room for what it would then have to hold.
 */
export const latestStarts = (jobs: readonly BenchJob[], days: DayMinutes): ReadonlyMap<number, number> => {
  const { placeOf } = closingsOf(jobs);
  const events = new Map<number, { job: BenchJob; place: number }[]>();
  for (const job of jobs) {
    if (job.minutes <= slightly) continue;
    const mine = events.get(job.event) ?? [];
    mine.push({ job, place: placeOf(job) });
    events.set(job.event, mine);
  }
  const latest = new Map<number, number>();
  const endingOn = new Map<number, number[]>();
  for (const [event, mine] of events) {
    mine.sort((a, b) => a.place - b.place);
    const end = Math.min(...mine.map(({ job }) => job.closes));
    latest.set(event, end);
    endingOn.set(end, [...(endingOn.get(end) ?? []), event]);
  }
  let watched: number[] = [];
  sweep(jobs, days, (day, least) => {
    watched.push(...(endingOn.get(day) ?? []));
    watched = watched.filter((event) => events.get(event)?.some(({ job }) => job.opens < day));
    for (const event of watched) {
      let moved = 0; // minutes that would newly have to fit from this day on
      for (const { job, place } of events.get(event) ?? []) {
        if (job.opens >= day) continue;
        moved += job.minutes;
        if (least(place).amount < moved - slightly) {
          latest.set(event, day - 1);
          break;
        }
      }
    }
  });
  return latest;
};
