// The figures a script reads: names and shapes are an interface, so they are written out.

import { expect, test } from 'vitest';
import { benchFigures, calendarFigures } from '../../src/planning/bench-figures.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { anEvent, day, rulesOf } from './a-studio.ts';

const today = day('2027-01-20');

test('an event that fits', () => {
  const plan = planBench([anEvent()], rulesOf(), today);
  expect(benchFigures(plan, 'harbour dance')).toEqual({
    minutesPlanned: 600,
    minutesLeft: 600,
    comfortableStart: '2027-03-10',
    latestStart: '2027-03-11',
    opens: '2027-01-19',
    boarded: '2027-03-11',
    fits: true,
    days: [
      { date: '2027-03-10', minutes: 180, pieces: { buttonhole: 12 } },
      { date: '2027-03-11', minutes: 420, pieces: { buttonhole: 28 } },
    ],
  });
  expect(calendarFigures(plan, 'harbour dance')?.[0]).toEqual({ step: 'event', date: '2027-03-13', late: false, grade: 'said' });
});

test('an event that does not: what is short, where, and the cures', () => {
  const plan = planBench([anEvent({ material: 'fresh', lines: [{ piece: 'buttonhole', count: 60 }] })], rulesOf(), today);
  expect(benchFigures(plan, 'harbour dance')).toMatchObject({ fits: false, minutesShort: 300, tight: { from: '2027-03-12' } });
  expect(benchFigures(plan, 'harbour dance')?.cures?.map(({ cure }) => cure)).toEqual([
    'add hours',
    'make fresh earlier',
    'move to dried',
    'fewer pieces',
  ]);
});

test('an event that is not in the plan has no figures', () => {
  const plan = planBench([], rulesOf(), today);
  expect(benchFigures(plan, 'nobody’s')).toBeUndefined();
  expect(calendarFigures(plan, 'nobody’s')).toBeUndefined();
});
