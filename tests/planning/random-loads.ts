// Random loads for the property tests: jobs of whole pieces in windows of days, and benches that are sometimes empty for a day.

import fc from 'fast-check';
import type { BenchJob } from '../../src/planning/bench-job.ts';

export interface Load {
  readonly jobs: readonly BenchJob[];
  readonly days: readonly number[];
}

const job = (lastDay: number): fc.Arbitrary<Omit<BenchJob, 'line'>> =>
  fc
    .record({
      event: fc.nat({ max: 4 }),
      opened: fc.integer({ min: -20, max: lastDay }),
      length: fc.nat({ max: lastDay }),
      each: fc.constantFrom(5, 7.5, 10, 15, 20, 30, 60),
      pieces: fc.integer({ min: 1, max: 25 }),
      cut: fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }),
    })
    .map(({ event, opened, length, each, pieces, cut }) => {
      const opens = Math.max(0, opened);
      const closes = Math.min(lastDay, opens + length);
      const closesAfter = cut === undefined ? {} : { closesAfter: cut };
      const what = { piece: 'buttonhole', material: 'dried', stage: 'whole', late: false } as const;
      return { ...what, event, each, pieces, minutes: each * pieces, opened: Math.min(opened, opens), opens, closes, ...closesAfter };
    });

/** About half of these fit. */
export const loads: fc.Arbitrary<Load> = fc.integer({ min: 1, max: 12 }).chain((length) =>
  fc.record({
    days: fc.array(fc.constantFrom(0, 60, 240, 300, 480, 600), { minLength: length, maxLength: length }),
    jobs: fc.array(job(length - 1), { minLength: 1, maxLength: 8 }).map((jobs) => jobs.map((one, line) => ({ ...one, line }))),
  }),
);
