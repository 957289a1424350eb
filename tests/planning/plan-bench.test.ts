// The plan of the whole bench: worked by hand from the studio's hours (600 minutes a day, Tuesday to Friday) and 15 minutes a buttonhole.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '../../src/handbook/pieces.ts';
import type { BenchPlan, EventPlan } from '../../src/planning/bench-plan.ts';
import { type EventToPlan, eventToPlan } from '../../src/planning/event-to-plan.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { newEvent } from '../../src/thread/event.ts';
import { addDays } from '../../src/values/day.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const today = day('2027-01-20');
const plan = (...events: readonly EventToPlan[]): BenchPlan => planBench(events, rulesOf(), today);
const only = (bench: BenchPlan): EventPlan => {
  const [event] = bench.events;
  if (!event) throw new Error('no event in the plan');
  return event;
};

describe('one event', () => {
  test('40 dried buttonholes for Saturday 13 March: 600 minutes, no day over 420, boarded by Thursday', () => {
    expect(only(plan(anEvent()))).toMatchObject({
      minutesPlanned: 600,
      minutesLeft: 600,
      fits: true,
      opens: '2027-01-19',
      boarded: '2027-03-11',
      handOver: '2027-03-12',
      comfortableStart: '2027-03-10',
      latestStart: '2027-03-11',
      days: [
        { date: '2027-03-10', minutes: 180, pieces: { buttonhole: 12 } },
        { date: '2027-03-11', minutes: 420, pieces: { buttonhole: 28 } },
      ],
    });
  });

  test('the same fresh fills Friday to the last minute: it fits, but there is no comfortable start', () => {
    const event = only(plan(anEvent({ material: 'fresh', time: '14:00' })));
    expect(event).toMatchObject({
      fits: true,
      latestStart: '2027-03-12',
      days: [{ date: '2027-03-12', minutes: 600, pieces: { buttonhole: 40 } }],
    });
    expect(event.comfortableStart).toBeUndefined();
  });

  test('a mixed piece is two jobs: bases early, the fresh part on its last day', () => {
    const event = only(plan(anEvent({ material: 'mixed' })));
    expect(event.minutesPlanned).toBe(600);
    expect(event.days).toEqual([
      { date: '2027-03-11', minutes: 400, pieces: {}, bases: { buttonhole: 40 } },
      { date: '2027-03-12', minutes: 200, pieces: { buttonhole: 40 }, bases: {} },
    ]);
  });

  test('bases that wait for their fresh part are not made again', () => {
    const mixed = anEvent({ material: 'mixed' });
    const event = only(plan({ ...mixed, lines: mixed.lines.map((line) => ({ ...line, basesLeft: 10 })) }));
    expect(event.minutesLeft).toBe(300);
    expect(event.days.map(({ pieces, bases }) => [bases.buttonhole ?? 0, pieces.buttonhole ?? 0])).toEqual([
      [10, 0],
      [0, 40],
    ]);
  });

  test('of mixed pieces no more are finished than there are bases for', () => {
    const crowns = anEvent({ lines: [{ piece: 'flower crown', count: 30 }], material: 'mixed', date: day('2027-01-23') });
    const [friday] = only(planBench([crowns], rulesOf(), day('2027-01-21'))).days.slice(-1);
    expect(friday).toMatchObject({ date: '2027-01-22', pieces: { 'flower crown': 15 }, bases: {} }); // Thursday's 600 minutes at 40 a base
  });

  test('what is made is not planned again; what broke is', () => {
    expect(only(plan(anEvent({ progress: { buttonhole: { made: 12, broke: 2 } } })))).toMatchObject({
      minutesPlanned: 600,
      minutesLeft: 420,
    });
  });

  test('all made: nothing to start', () => {
    const event = only(plan(anEvent({ progress: { buttonhole: { made: 40, broke: 0 } } })));
    expect(event).toMatchObject({ fits: true, minutesLeft: 0, days: [] });
    expect(event.latestStart).toBeUndefined();
  });

  test('"40 to 45" keeps room for 45', () => {
    expect(only(plan(anEvent({ lines: [{ piece: 'buttonhole', count: 40, countMax: 45 }] }))).minutesPlanned).toBe(675);
  });

  test('a material nobody said is planned as fresh, the tightest, and says so', () => {
    const unsaid = { ...newEvent, date: day('2027-03-13'), lines: [{ piece: 'buttonhole' as const, count: 40 }] };
    const event = only(plan(eventToPlan('harbour dance', unsaid, aStudio()) ?? anEvent()));
    expect(event).toMatchObject({ materialAssumed: true, latestStart: '2027-03-12' });
  });
});

describe('minutes for one piece', () => {
  test.each([
    ['the handbook', {}, [], [], 15],
    ['the settings', { minutes: { buttonhole: 12 } }, [], [], 12],
    [
      'said since: "takes me 7 mins per buttonhole"',
      { minutes: { buttonhole: 12 } },
      [{ fact: 'crew', minutesPerPiece: 7, words: '' }],
      [],
      7,
    ],
    ['a pace: 6 an hour', {}, [{ fact: 'crew', piecesPerHour: 6, words: '' }], [], 10],
    ['this event alone', { minutes: { buttonhole: 12 } }, [], [{ fact: 'rule', what: 'minutes', to: '20', words: '' }], 20],
  ] as const)('%s', (_, settings, crew, rules, minutes) => {
    const studio = aStudio(settings, { crew });
    expect(anEvent({ rules }, studio).lines[0]?.minutesEach).toBe(minutes);
  });
});

describe('two lines of one kind', () => {
  test('what is made counts for the line that could be made first', () => {
    const lines = [
      { piece: 'buttonhole', count: 4, material: 'fresh' },
      { piece: 'buttonhole', count: 10 },
    ] as const;
    const event = anEvent({ lines, progress: { buttonhole: { made: 12, broke: 0 } } });
    expect(event.lines.map((line) => line.left)).toEqual([2, 0]);
  });
});

describe('several events', () => {
  test('they share the bench, earlier dates first, and each has its own dates', () => {
    const bench = plan(anEvent({ date: day('2027-03-20') }, aStudio(), 'second'), anEvent({}, aStudio(), 'first'));
    expect(bench.events.map((event) => [event.key, event.comfortableStart])).toEqual([
      ['first', '2027-03-10'],
      ['second', '2027-03-17'],
    ]);
  });

  test('a cancelled, an undated and an empty order are not planned; a past one is named', () => {
    const studio = aStudio();
    expect(() => anEvent({ cancelled: true }, studio)).toThrow();
    expect(() => anEvent({ lines: [] }, studio)).toThrow();
    const bench = plan(anEvent({ date: day('2027-01-19') }));
    expect(bench.events).toEqual([]);
    expect(bench.notPlanned).toEqual([{ key: 'harbour dance', why: 'past' }]);
  });

  test('"made 3" leaves a quiet week as it was, but for those three pieces', () => {
    const others = ['one', 'two'].map((key, index) => anEvent({ date: addDays(day('2027-03-20'), 7 * index) }, aStudio(), key));
    const before = plan(anEvent(), ...others);
    const after = plan(anEvent({ progress: { buttonhole: { made: 3, broke: 0 } } }), ...others);
    const firstDay = before.days[0]?.date;
    expect(after.days.filter((one) => one.date !== firstDay)).toEqual(before.days.filter((one) => one.date !== firstDay));
    expect(after.days[0]?.tasks[0]?.pieces).toBe((before.days[0]?.tasks[0]?.pieces ?? 0) - 3);
  });
});

const orders = fc.array(
  fc.record({
    date: fc.integer({ min: 0, max: 60 }).map((days) => addDays(today, days)),
    time: fc.constantFrom(undefined, '10:00', '14:30', '19:00'),
    lines: fc.array(
      fc.record({
        piece: fc.constantFrom('buttonhole' as const, 'corsage' as const, 'flower crown' as const),
        count: fc.integer({ min: 1, max: 30 }),
        material: fc.constantFrom(...materials),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  }),
  { minLength: 1, maxLength: 8 },
);

describe('any orders', () => {
  test('no day is over its minutes; pieces are whole and never more than were left; starts are in order', () => {
    fc.assert(
      fc.property(orders, (some) => {
        const events = some.map(({ time, ...event }, index) =>
          anEvent({ ...event, ...(time === undefined ? {} : { time }) }, aStudio(), `${index}`),
        );
        const bench = planBench(events, rulesOf(), today);
        for (const one of bench.days) {
          expect(one.minutes).toBeLessThanOrEqual(one.capacity + 0.01);
          expect(one.date >= today).toBe(true);
        }
        for (const event of bench.events) {
          const planned = event.days.flatMap((one) => Object.values(one.pieces)).reduce((total, pieces) => total + pieces, 0);
          const left = event.event.lines.reduce((total, line) => total + line.left, 0);
          if (event.fits) expect(planned).toBe(left);
          else expect(planned).toBeLessThan(left);
          if (event.comfortableStart && event.latestStart) expect(event.comfortableStart <= event.latestStart).toBe(true);
          if (event.fits) expect(event.latestStart).toBeDefined();
          for (const one of event.days) expect(one.date <= event.event.date).toBe(true);
        }
        expect(bench.fits).toBe(bench.events.every((event) => event.fits));
        expect(bench.tight === undefined).toBe(bench.fits);
      }),
      { numRuns: 100 },
    );
  });
});
