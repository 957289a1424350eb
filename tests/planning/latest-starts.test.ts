// The latest start is truly the latest: begun on that day everything still fits, begun one working day later something does not.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BenchJob } from '../../src/planning/bench-job.ts';
import { fillEarliest } from '../../src/planning/earliest-deadline.ts';
import { latestStarts } from '../../src/planning/latest-starts.ts';
import { loads } from './random-loads.ts';

/** The same load with one event not begun before a day. Work whose window is over by then cannot be done at all. */
const begunOn = (jobs: readonly BenchJob[], event: number, day: number): readonly BenchJob[] =>
  jobs.map((job) => (job.event === event ? { ...job, opens: Math.max(job.opens, day) } : job));

const short = (jobs: readonly BenchJob[], days: readonly number[]): number => {
  const never = jobs.filter((job) => job.opens > job.closes).reduce((total, job) => total + job.minutes, 0);
  const filled = fillEarliest(
    jobs.filter((job) => job.opens <= job.closes),
    days,
  );
  return never + filled.minutesShort;
};

test('one working day later fails', () => {
  fc.assert(
    fc.property(loads, ({ jobs: wanted, days }) => {
      const trimmed = fillEarliest(wanted, days).short;
      const jobs = wanted.map((job, index) => ({ ...job, minutes: job.minutes - (trimmed[index] ?? 0) }));
      const starts = latestStarts(jobs, days);
      for (const event of new Set(jobs.filter((job) => job.minutes > 1e-6).map((job) => job.event))) {
        const start = starts.get(event);
        expect(start).toBeDefined();
        if (start === undefined) continue;
        expect(short(begunOn(jobs, event, start), days)).toBeLessThan(1e-3);
        const next = days.findIndex((minutes, day) => day > start && minutes > 0);
        const later = next < 0 ? days.length : next;
        expect(short(begunOn(jobs, event, later), days)).toBeGreaterThan(1e-6);
      }
    }),
    { numRuns: 500 },
  );
});
