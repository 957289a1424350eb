// The verdict "fits" against an independent reckoning: the same load as a linear programme, solved by HiGHS (https://highs.dev), which knows nothing of
// deadlines coming first. Rows: a job's minutes over the days of its window; a day's minutes; and the minutes before each closing hour of a day.

import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { fillEarliest } from '../../src/planning/earliest-deadline.ts';
import { isInside, tightestStretch } from '../../src/planning/stretches.ts';
import { type Load, loads } from './random-loads.ts';

type Solver = { solve(text: string): { Status: string; ObjectiveValue: number } };
let highs: Solver;

beforeAll(async () => {
  const load = (await import('highs')).default as unknown as () => Promise<Solver>;
  highs = await load();
});

/** The most minutes any plan can place, by the solver. */
const mostPlaced = ({ jobs, days }: Load): number => {
  const names = jobs.map((job, index) =>
    days.flatMap((_, day) => (day >= job.opens && day <= job.closes ? [{ day, name: `x${index}_${day}` }] : [])),
  );
  const all = names.flat().map(({ name }) => name);
  const rows: string[] = jobs.map((job, index) => `${(names[index] ?? []).map(({ name }) => name).join(' + ')} <= ${job.minutes}`);
  days.forEach((minutes, day) => {
    const on = names.flat().filter((one) => one.day === day);
    if (on.length > 0) rows.push(`${on.map(({ name }) => name).join(' + ')} <= ${minutes}`);
    for (const cut of new Set(jobs.flatMap((job) => (job.closes === day && job.closesAfter !== undefined ? [job.closesAfter] : [])))) {
      const early = names.flatMap((one, index) => {
        const job = jobs[index];
        return job?.closes === day && job.closesAfter !== undefined && job.closesAfter <= cut
          ? one.filter((share) => share.day === day)
          : [];
      });
      rows.push(`${early.map(({ name }) => name).join(' + ')} <= ${cut}`);
    }
  });
  const text = `Maximize\n obj: ${all.join(' + ')}\nSubject To\n${rows.map((row, index) => ` r${index}: ${row}`).join('\n')}\nEnd`;
  const solution = highs.solve(text);
  expect(solution.Status).toBe('Optimal');
  return solution.ObjectiveValue;
};

test('500 random benches: what does not fit is exactly what the linear programme cannot place, to the minute', () => {
  let fitted = 0;
  fc.assert(
    fc.property(loads, (load) => {
      const wanted = load.jobs.reduce((total, job) => total + job.minutes, 0);
      const { minutesShort } = fillEarliest(load.jobs, load.days);
      if (minutesShort < 1e-6) fitted += 1;
      expect(wanted - minutesShort).toBeCloseTo(mostPlaced(load), 4);
    }),
    { numRuns: 500, seed: 20270120 },
  );
  expect(fitted).toBeGreaterThan(50); // both verdicts are met often
  expect(fitted).toBeLessThan(450);
});

test('a stretch without room is found exactly when the bench does not fit, and what lies in it really lacks those minutes', () => {
  fc.assert(
    fc.property(loads, ({ jobs, days }) => {
      const { minutesShort } = fillEarliest(jobs, days);
      const tight = tightestStretch(jobs, days);
      expect(tight !== undefined).toBe(minutesShort > 1e-6);
      if (!tight) return;
      const needed = jobs.filter((job) => isInside(job, tight)).reduce((total, job) => total + job.minutes, 0);
      const before = days.slice(tight.from, tight.to).reduce((total, minutes) => total + minutes, 0);
      expect(needed - before - Math.min(days[tight.to] ?? 0, tight.toAfter)).toBeCloseTo(tight.short, 6);
      expect(tight.short).toBeLessThanOrEqual(minutesShort + 1e-6);
    }),
  );
});
