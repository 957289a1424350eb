// What any day of a plan may hold: never more than its minutes, only work whose window is open, whole pieces, all the work when it fits.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BenchJob } from '../../src/planning/bench-job.ts';
import { comfortable, dayLimits } from '../../src/planning/day-limits.ts';
import { fillEarliest } from '../../src/planning/earliest-deadline.ts';
import { fillLatest } from '../../src/planning/latest-fill.ts';
import { tightestStretch } from '../../src/planning/stretches.ts';
import { wholePieces } from '../../src/planning/whole-pieces.ts';
import { type Load, loads } from './random-loads.ts';

/** The load without what fits nowhere. */
const fitting = ({ jobs, days }: Load): readonly BenchJob[] => {
  const { short } = fillEarliest(jobs, days);
  return jobs.map((job, index) => ({ ...job, minutes: job.minutes - (short[index] ?? 0) }));
};

const noise = 1e-4;

test('no day is over its minutes, and every share lies inside its window and before its closing hour', () => {
  fc.assert(
    fc.property(loads, (load) => {
      const jobs = fitting(load);
      const shares = fillLatest(jobs, dayLimits(jobs, load.days));
      const used = load.days.map(() => 0);
      for (const { day, job, minutes } of shares) {
        used[day] = (used[day] ?? 0) + minutes;
        expect(day).toBeGreaterThanOrEqual(jobs[job]?.opens ?? 0);
        expect(day).toBeLessThanOrEqual(jobs[job]?.closes ?? 0);
      }
      for (const [day, minutes] of used.entries()) expect(minutes).toBeLessThanOrEqual((load.days[day] ?? 0) + noise);
      for (const [day] of load.days.entries()) {
        for (const cut of jobs.flatMap((job) => (job.closes === day && job.closesAfter !== undefined ? [job.closesAfter] : []))) {
          const early = shares.filter((share) => {
            const job = jobs[share.job];
            return share.day === day && job?.closes === day && job.closesAfter !== undefined && job.closesAfter <= cut;
          });
          expect(early.reduce((total, share) => total + share.minutes, 0)).toBeLessThanOrEqual(cut + noise);
        }
      }
    }),
    { numRuns: 500 },
  );
});

test('all the work that fits is placed', () => {
  fc.assert(
    fc.property(loads, (load) => {
      const jobs = fitting(load);
      const shares = fillLatest(jobs, dayLimits(jobs, load.days));
      for (const [index, job] of jobs.entries()) {
        const placed = shares.filter((share) => share.job === index).reduce((total, share) => total + share.minutes, 0);
        expect(placed).toBeCloseTo(job.minutes, 3);
      }
    }),
    { numRuns: 500 },
  );
});

test('whole pieces: each day finishes no more than the minutes spent so far allow, and in the end all that fit', () => {
  fc.assert(
    fc.property(loads, (load) => {
      const jobs = fitting(load);
      const work = wholePieces(jobs, fillLatest(jobs, dayLimits(jobs, load.days)));
      for (const [index, job] of jobs.entries()) {
        let minutes = 0;
        let pieces = 0;
        for (const share of work.filter((one) => one.job === index)) {
          minutes += share.minutes;
          pieces += share.pieces;
          expect(Number.isInteger(share.pieces)).toBe(true);
          expect(pieces * job.each).toBeLessThanOrEqual(minutes + noise);
        }
        expect(pieces).toBe(Math.min(job.pieces, Math.floor((job.minutes + noise) / job.each)));
      }
    }),
  );
});

test('no day is over 70 % full whenever that is possible', () => {
  fc.assert(
    fc.property(loads, (load) => {
      const jobs = fitting(load);
      const possible = tightestStretch(jobs, load.days.map(comfortable)) === undefined;
      const limits = dayLimits(jobs, load.days);
      const over = limits.some((limit, day) => limit > comfortable(load.days[day] ?? 0) + noise);
      expect(over).toBe(!possible);
    }),
  );
});
