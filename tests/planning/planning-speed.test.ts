// A season on one bench: 60 open events, 300 lines, 120 days. The plan is made on every message, so it must be quick, and stay so as the orders grow.

import { test } from 'vitest';
import { materials } from '../../src/handbook/pieces.ts';
import type { EventToPlan } from '../../src/planning/event-to-plan.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { addDays } from '../../src/values/day.ts';
import { inGoodTime } from '../support/in-good-time.ts';
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

/** Processor time of one plan in milliseconds: a busy machine makes the clock wait, not the reckoning longer. */
const timed = (events: readonly EventToPlan[]): number => {
  const before = process.cpuUsage();
  planBench(events, rules, today);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

/** Runs until the quickest of the runs is good enough, twenty times at most. */
const quickest = (run: () => number, enough: number): number => {
  let best = Number.POSITIVE_INFINITY;
  for (let runs = 0; runs < 20 && best >= enough; runs += 1) best = Math.min(best, run());
  return best;
};

test.each([
  ['that fit', 1],
  ['that do not fit', 3],
])('60 events with 300 lines over 120 days %s are planned in under 50 ms', (_, busy) => {
  const events = season(60, 120, busy);
  inGoodTime(
    quickest(() => timed(events), 50),
    50,
  );
});

test('eight times the orders over eight times the days grow no worse than n log n', () => {
  const sizes = [60, 120, 240, 480];
  const seasons = sizes.map((events) => season(events, 2 * events, 2));
  const best = sizes.map(() => Number.POSITIVE_INFINITY);
  const over = (index: number): number => (best[index] ?? 0) / ((sizes[index] ?? 1) * Math.log2(5 * (sizes[index] ?? 1)));
  for (let run = 0; run < 15; run += 1) best[0] = Math.min(best[0] ?? 0, timed(seasons[0] ?? [])); // the smallest warm, so as not to flatter the others
  const growth = quickest(() => {
    for (const [index, events] of seasons.entries()) best[index] = Math.min(best[index] ?? 0, timed(events));
    return over(3) / over(0);
  }, 1.5);
  const line = sizes.map(
    (events, index) => `${events} events ${(best[index] ?? 0).toFixed(1)} ms, ratio ${(over(index) / over(0)).toFixed(2)}`,
  );
  console.log(`time over n log n: ${line.join(' · ')}`);
  inGoodTime(growth, 2.5); // quadratic growth would be above five
});
