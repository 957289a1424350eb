// When it does not fit: how much is missing, where, and cures that are enough. Each cure is applied here and planned again.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '../../src/handbook/pieces.ts';
import type { Cure } from '../../src/planning/cures.ts';
import { dayNumber } from '../../src/planning/day-number.ts';
import type { EventToPlan, LineToPlan } from '../../src/planning/event-to-plan.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { workingDays } from '../../src/planning/working-days.ts';
import { addDays } from '../../src/values/day.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const today = day('2027-01-20');
const rules = rulesOf();
const cureOf = <C extends Cure['cure']>(cures: readonly Cure[], name: C): Extract<Cure, { cure: C }> | undefined =>
  cures.find((cure): cure is Extract<Cure, { cure: C }> => cure.cure === name);

const withLine = (event: EventToPlan, change: (line: LineToPlan) => readonly LineToPlan[]): EventToPlan => ({
  ...event,
  lines: event.lines.flatMap(change),
});

describe('60 fresh buttonholes for a Saturday: 900 minutes into one Friday of 600', () => {
  const event = anEvent({ lines: [{ piece: 'buttonhole', count: 60 }], material: 'fresh' });
  const bench = planBench([event], rules, today);

  test('says what is missing and where', () => {
    expect(bench).toMatchObject({
      fits: false,
      minutesShort: 300,
      tight: { from: '2027-03-12', to: '2027-03-12', minutesNeeded: 900, minutesThere: 600, minutesShort: 300, keys: ['harbour dance'] },
    });
    expect(bench.events[0]).toMatchObject({ fits: false, minutesShort: 300, days: [{ pieces: { buttonhole: 40 } }] });
    expect(bench.events[0]?.latestStart).toBeUndefined();
  });

  test('five more hours on that Friday are enough', () => {
    const cure = cureOf(bench.cures, 'add hours');
    expect(cure).toEqual({ cure: 'add hours', minutes: 300, on: [{ date: '2027-03-12', minutes: 300 }] });
    const minutes = workingDays(rules).on(dayNumber(day('2027-03-12'))).minutes + 300;
    const crew = [{ fact: 'crew', date: '2027-03-12', totalHours: minutes / 60, words: '' } as const];
    expect(planBench([event], { ...rules, crew }, today).fits).toBe(true);
  });

  test('buttonholes may be made a day earlier: 48 hours is the long end of the published range', () => {
    expect(cureOf(bench.cures, 'make fresh earlier')).toEqual({
      cure: 'make fresh earlier',
      keys: ['harbour dance'],
      days: 1,
      hoursAhead: 48,
    });
  });

  test('twenty of them in dried, or twenty fewer', () => {
    const moved = cureOf(bench.cures, 'move to dried')?.moves;
    expect(moved).toEqual([{ key: 'harbour dance', line: 0, piece: 'buttonhole', pieces: 20, keeps: 40 }]);
    const split = withLine(event, (line) => [
      { ...line, ordered: 40, left: 40 },
      { ...line, material: 'dried', ordered: 20, left: 20 },
    ]);
    expect(planBench([split], rules, today).fits).toBe(true);
    expect(cureOf(bench.cures, 'fewer pieces')?.drops).toEqual(moved);
    expect(planBench([withLine(event, (line) => [{ ...line, left: 40 }])], rules, today).fits).toBe(true);
  });

  test('a corsage may not be made two days early, so that is no cure for corsages', () => {
    const corsages = planBench([anEvent({ lines: [{ piece: 'corsage', count: 30 }], material: 'fresh' })], rules, today);
    expect(corsages.fits).toBe(false);
    expect(cureOf(corsages.cures, 'make fresh earlier')).toBeUndefined();
  });
});

test('dried work short of a day may be boarded later', () => {
  const event = anEvent({ lines: [{ piece: 'buttonhole', count: 70 }], date: day('2027-01-23') });
  const bench = planBench([event], rules, today); // Wednesday; boards due on Thursday
  expect(bench).toMatchObject({ fits: true });
  const more = planBench([anEvent({ lines: [{ piece: 'buttonhole', count: 100 }], date: day('2027-01-23') })], rules, today);
  expect(more).toMatchObject({ fits: false, minutesShort: 300 });
  expect(cureOf(more.cures, 'board later')).toEqual({ cure: 'board later', workingDaysBefore: 1 });
});

test('nobody at the bench: nothing fits, and the hours to find are named', () => {
  const nobody = rulesOf(aStudio({ bench: { people: 0, hours: { friday: 5 }, openOnHolidays: true } }));
  const bench = planBench([anEvent()], nobody, today);
  expect(bench).toMatchObject({ fits: false, minutesShort: 600, nobodyAtTheBench: true, days: [] });
  expect(cureOf(bench.cures, 'add hours')?.minutes).toBe(600);
});

test('ten thousand pieces: the honest shortage, and how many do fit', () => {
  const bench = planBench([anEvent({ lines: [{ piece: 'buttonhole', count: 10_000 }] })], rules, today);
  expect(bench.fits).toBe(false);
  const made = bench.events[0]?.days.reduce((total, one) => total + (one.pieces.buttonhole ?? 0), 0) ?? 0;
  // 20 January to 11 March, Tuesday to Friday: 30 bench days of 600 minutes, 40 pieces each.
  expect(made).toBe(1200);
  expect(bench.minutesShort).toBe(150_000 - 18_000);
  expect(cureOf(bench.cures, 'fewer pieces')?.drops[0]).toMatchObject({ pieces: 8800, keeps: 1200 });
});

test('an event on a closed day is worked for on the days before it', () => {
  const bench = planBench([anEvent({ date: day('2027-03-14'), material: 'fresh' })], rules, today);
  expect(bench.events[0]).toMatchObject({ fits: true, handOver: '2027-03-12', latestStart: '2027-03-12' });
});

test('an event today is planned with the minutes there are', () => {
  const bench = planBench(
    [anEvent({ date: today, time: '11:00', lines: [{ piece: 'buttonhole', count: 20 }], material: 'fresh' })],
    rules,
    today,
  );
  expect(bench.events[0]).toMatchObject({
    late: true,
    fits: false,
    minutesShort: 60,
    days: [{ date: today, minutes: 240, pieces: { buttonhole: 16 } }],
  });
});

test('an overload in one week leaves the dates of another alone', () => {
  const calm = anEvent({ date: day('2027-05-15') }, aStudio(), 'calm');
  const alone = planBench([calm], rules, today).events[0];
  const beside = planBench([anEvent({ lines: [{ piece: 'corsage', count: 90 }], material: 'fresh' }), calm], rules, today).events[1];
  expect(beside).toMatchObject({ fits: true, comfortableStart: alone?.comfortableStart, latestStart: alone?.latestStart });
});

const crowded = fc.array(
  fc.record({
    days: fc.integer({ min: 1, max: 30 }),
    lines: fc.array(
      fc.record({
        piece: fc.constantFrom('buttonhole' as const, 'corsage' as const),
        count: fc.integer({ min: 10, max: 90 }),
        material: fc.constantFrom(...materials),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  }),
  { minLength: 1, maxLength: 5 },
);

test('any overload: the cures offered are enough when they are carried out', () => {
  fc.assert(
    fc.property(crowded, (orders) => {
      const events = orders.map(({ days, lines }, index) => anEvent({ date: addDays(today, days), lines }, aStudio(), `${index}`));
      const bench = planBench(events, rules, today);
      if (bench.fits) expect(bench.cures).toEqual([]);
      const hours = cureOf(bench.cures, 'add hours');
      if (!bench.fits) expect(hours).toBeDefined(); // there is always an answer
      const working = workingDays(rules);
      const crew = (hours?.on ?? []).map(({ date, minutes }) => {
        const all = working.on(dayNumber(date)).minutes + minutes;
        return { fact: 'crew', date, people: 24, totalHours: all / 60, words: '' } as const;
      });
      const before = bench.events.map((event) => [event.opens, event.boarded, event.handOver]);
      const cured = planBench(events, { ...rules, crew }, today);
      const moved = cured.events.map((event) => [event.opens, event.boarded, event.handOver]);
      if (JSON.stringify(before) === JSON.stringify(moved)) expect(cured.fits).toBe(true); // hours on a closed day move the dates too
      const drops = cureOf(bench.cures, 'fewer pieces')?.drops ?? [];
      if (drops.length === 0) return;
      const kept = events.map((event) => {
        const lines = event.lines.map((line, index) => {
          const drop = drops.find((one) => one.key === event.key && one.line === index);
          return { ...line, left: drop ? drop.keeps : line.left };
        });
        return { ...event, lines };
      });
      expect(planBench(kept, rules, today).fits).toBe(true);
    }),
    { numRuns: 100 },
  );
});
