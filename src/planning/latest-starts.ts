// How late each event may start with every other event free to move. One day later, some stretch that begins there has no room for what it would then hold.

import { type BenchJob, type DayMinutes, slightly } from './bench-job.ts';
import { stretchSweep } from './stretch-sweep.ts';

interface Part {
  readonly job: BenchJob;
  readonly place: number; // of its closing
}

/** By event, the latest day (from today) that all its jobs may start while everything still fits. The jobs given must fit. `only`: of this event alone. */
export const latestStarts = (jobs: readonly BenchJob[], days: DayMinutes, only?: number): ReadonlyMap<number, number> => {
  const sweep = stretchSweep(jobs);
  const events = partsByEvent(jobs, sweep.places, only);
  const latest = new Map<number, number>();
  const endingOn = new Map<number, number[]>();
  for (const [event, parts] of events) {
    const end = Math.min(...parts.map(({ job }) => job.closes));
    latest.set(event, end);
    endingOn.set(end, [...(endingOn.get(end) ?? []), event]);
  }
  let watched: number[] = [];
  sweep.run(days, (day, least) => {
    const ending = endingOn.get(day);
    if (ending) watched = [...watched, ...ending];
    let opened = 0; // events none of whose jobs opens before this day: they are settled
    for (const event of watched) {
      let moved = 0; // minutes that would newly have to fit from this day on
      for (const { job, place } of events.get(event) ?? []) {
        if (job.opens >= day) continue;
        moved += job.minutes;
        if (least.from(place) < moved - slightly) {
          latest.set(event, day - 1);
          break;
        }
      }
      if (moved === 0) opened += 1;
    }
    if (opened > 0) watched = watched.filter((event) => events.get(event)?.some(({ job }) => job.opens < day));
  });
  return latest;
};

const partsByEvent = (jobs: readonly BenchJob[], places: readonly number[], only?: number): ReadonlyMap<number, readonly Part[]> => {
  const events = new Map<number, Part[]>();
  for (const [index, job] of jobs.entries()) {
    if (job.minutes <= slightly || (only !== undefined && job.event !== only)) continue;
    const parts = events.get(job.event) ?? [];
    parts.push({ job, place: places[index] ?? 0 });
    events.set(job.event, parts);
  }
  for (const parts of events.values()) parts.sort((a, b) => a.place - b.place);
  return events;
};
