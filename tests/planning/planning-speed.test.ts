// A season on one bench: 60 open events, 300 lines, 120 days. The plan is made on every message, so it must be quick, and stay so as the orders grow.

import { expect, test } from 'vitest';
import { materials } from '../../src/handbook/pieces.ts';
import type { EventToPlan } from '../../src/planning/event-to-plan.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { addDays } from '../../src/values/day.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const today = day('2027-01-20');
const rules = rulesOf();
const pieces = ['buttonhole', 'corsage', 'flower crown', 'hair flower'] as const;

/** Events spread over the days, the same each time. From `busy` 2 on it is more than the bench can do, in most weeks. */
const season = (events: number, days: number, busy = 1): readonly EventToPlan[] =>
  Array.from({ length: events }, (_, event) => {
    const lines = Array.from({ length: 5 }, (__, line) => ({
      piece: pieces[(event + line) % pieces.length] ?? 'buttonhole',
      count: busy + ((event * 7 + line * 3) % 6),
      material: materials[(event + 2 * line) % materials.length] ?? 'dried',
    }));
    return anEvent({ date: addDays(today, 1 + ((event * 37) % days)), lines }, aStudio(), `event ${event}`);
  });

/** The quickest of some runs, in milliseconds: what the machine can do when nothing else disturbs it. */
const quickest = (events: readonly EventToPlan[], runs: number): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    planBench(events, rules, today);
    best = Math.min(best, performance.now() - start);
  }
  return best;
};

test('60 events with 300 lines over 120 days are planned in under 50 ms, whether they fit or not', () => {
  expect(quickest(season(60, 120), 20)).toBeLessThan(50);
  expect(quickest(season(60, 120, 3), 20)).toBeLessThan(50);
});

test('twice, four and eight times the orders grow no worse than n log n', () => {
  const sizes = [60, 120, 240, 480];
  const times = sizes.map((events) => quickest(season(events, 2 * events, 2), 8));
  const ratios = times.map((time, index) => time / ((sizes[index] ?? 1) * Math.log2(5 * (sizes[index] ?? 1))));
  const line = ratios.map(
    (ratio, index) => `${sizes[index]} events ${(times[index] ?? 0).toFixed(1)} ms, ${((ratio / (ratios[0] ?? 1)) * 100).toFixed(0)} %`,
  );
  console.log(`time over n log n, against the first: ${line.join(' · ')}`);
  expect((ratios.at(-1) ?? 0) / (ratios[0] ?? 1)).toBeLessThan(2.5); // quadratic growth would be above five
});
