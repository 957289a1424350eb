// Bench days hold whole pieces: the minutes of a day are its pieces times the minutes of one, wherever the bench has the room.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BenchJob } from '../../src/planning/bench-job.ts';
import { comfortable, dayLimits } from '../../src/planning/day-limits.ts';
import { fillEarliest } from '../../src/planning/earliest-deadline.ts';
import { jobsThatFit } from '../../src/planning/jobs-that-fit.ts';
import { fillLatest, type Share } from '../../src/planning/latest-fill.ts';
import { tightestStretch } from '../../src/planning/stretches.ts';
import { wholeDays } from '../../src/planning/whole-days.ts';
import { type Load, loads } from './random-loads.ts';

const planned = ({ jobs, days }: Load) => {
  const placed = jobsThatFit(jobs, fillEarliest(jobs, days).short);
  const limits = dayLimits(placed, days);
  return { placed, limits, shares: wholeDays(placed, limits, fillLatest(placed, limits)) };
};
const noise = 1e-4;

const sum = (shares: readonly Share[], of: (share: Share) => boolean): number =>
  shares.filter(of).reduce((total, { minutes }) => total + minutes, 0);

const job = (each: number, pieces: number, opens: number, closes: number): BenchJob => {
  const what = { event: 0, line: 0, piece: 'buttonhole', material: 'dried', stage: 'whole', late: false } as const;
  return { ...what, each, pieces, minutes: each * pieces, opened: opens, opens, closes };
};

describe('whole days', () => {
  test('40 buttonholes of 15 minutes over two days of 336 comfortable minutes: 18 and 22, not 17.6 and 22.4', () => {
    const { shares } = planned({ jobs: [job(15, 40, 0, 1)], days: [480, 480] });
    expect(shares.map(({ minutes }) => minutes / 15)).toEqual([18, 22]);
  });

  test('three full days hand their parts back one by one', () => {
    const { shares } = planned({ jobs: [job(15, 80, 0, 3)], days: [480, 480, 480, 480] });
    expect(shares.map(({ minutes }) => minutes / 15)).toEqual([14, 22, 22, 22]);
  });

  test('where every minute is needed, a piece is begun on one day and finished on the next', () => {
    const { shares } = planned({ jobs: [job(60, 3, 0, 1)], days: [90, 90] });
    expect(shares.map(({ minutes }) => minutes)).toEqual([90, 90]);
  });

  test('never over a limit, always inside the window and before its closing hour, and every minute placed', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { placed, limits, shares } = planned(load);
        for (const [day, limit] of limits.entries()) {
          expect(sum(shares, (share) => share.day === day)).toBeLessThanOrEqual(limit + noise);
          for (const { closes, closesAfter: cut } of placed) {
            if (closes !== day || cut === undefined) continue;
            const early = sum(shares, (share) => {
              const one = placed[share.job];
              return share.day === day && one?.closes === day && (one.closesAfter ?? Number.POSITIVE_INFINITY) <= cut;
            });
            expect(early).toBeLessThanOrEqual(cut + noise);
          }
        }
        for (const [index, one] of placed.entries()) {
          const mine = shares.filter((share) => share.job === index);
          expect(sum(mine, () => true)).toBeCloseTo(one.minutes, 3);
          for (const { day } of mine) expect(day >= one.opens && day <= one.closes).toBe(true);
        }
        expect(shares.map(({ day }) => day)).toEqual(shares.map(({ day }) => day).sort((a, b) => a - b));
      }),
      { numRuns: 500 },
    );
  });

  test('where a comfortable plan has one piece of each job to spare every day, every day holds whole pieces', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { placed, shares } = planned(load);
        const parts = placed.reduce((total, one) => total + one.each, 0);
        const spared = load.days.map((minutes) => Math.max(0, comfortable(minutes) - parts));
        fc.pre(tightestStretch(placed, spared) === undefined);
        for (const { job: index, minutes } of shares) {
          const pieces = minutes / (placed[index]?.each ?? 1);
          expect(pieces).toBeCloseTo(Math.max(1, Math.round(pieces)), 3);
        }
      }),
      { numRuns: 300 },
    );
  });
});
