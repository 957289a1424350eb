// Where more bench hours would help: on the closing day of the work that is short, or spread over the last working days of its window when one day would be too long.

import { type BenchJob, slightly } from './bench-job.ts';
import type { BenchLoad } from './bench-load.ts';

const quarter = 15; // minutes: hours are added in quarters

/** Minutes to add per day (days from today). Not yet proven enough when spread: the caller tries it. */
export const extraHours = (load: BenchLoad, short: readonly number[], spread: boolean): ReadonlyMap<number, number> => {
  const extra = new Map<number, number>();
  load.jobs.forEach((job, index) => {
    const missing = short[index] ?? 0;
    if (missing <= slightly) return;
    const days = daysToAdd(job, load, missing, spread);
    for (const day of days) extra.set(day, (extra.get(day) ?? 0) + missing / days.length);
  });
  return new Map([...extra].map(([day, minutes]) => [day, Math.ceil(minutes / quarter - slightly) * quarter]));
};

/** The same load with those minutes at the bench; on a closing day they come before the closing hour. */
export const withExtra = (load: BenchLoad, extra: ReadonlyMap<number, number>): { jobs: readonly BenchJob[]; days: readonly number[] } => ({
  days: load.days.map((minutes, day) => minutes + (extra.get(day) ?? 0)),
  jobs: load.jobs.map((job) =>
    job.closesAfter === undefined ? job : { ...job, closesAfter: job.closesAfter + (extra.get(job.closes) ?? 0) },
  ),
});

const daysToAdd = (job: BenchJob, load: BenchLoad, missing: number, spread: boolean): readonly number[] => {
  const working: number[] = [];
  for (let day = job.closes; day >= job.opens; day -= 1) if ((load.days[day] ?? 0) > 0) working.push(day);
  const [last = Math.max(0, job.closes)] = working;
  if (!spread) return [Math.max(0, job.closes)];
  const longest = Math.max(...working.map((day) => load.days[day] ?? 0), 1);
  const count = Math.min(working.length, Math.ceil(missing / (longest / 2)));
  return count <= 1 ? [last] : working.slice(0, count);
};
