// The morning reminder on the studio's own clock: on time, late, missed, once, and across clock changes.
// Change dates in 2027: Great Britain last Sundays of March and October at 01:00 UTC (Summer Time Order 2002); United States second Sunday of
// March and first of November at 02:00 (15 U.S.C. 260a); New South Wales first Sundays of April and October (Standard Time Act 1987 (NSW)).

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type DailyRun, startDailyRun } from '../../src/clockwork/daily-run.ts';
import { dueMorning, instantOf, type Morning, type Schedule } from '../../src/clockwork/due-morning.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { addDays, type Day } from '../../src/values/day.ts';

const day = (text: string): Day => text as Day;
const at = (text: string): number => Date.parse(text);
const london: Schedule = { at: '07:00', timeZone: 'Europe/London' };

describe('what is due', () => {
  const table: readonly (readonly [what: string, now: string, last: string | undefined, due: Morning | undefined])[] = [
    ['nothing a minute before seven', '2027-01-20T06:59:00Z', '2027-01-19', undefined],
    ['today at seven', '2027-01-20T07:00:00Z', '2027-01-19', { day: day('2027-01-20'), late: false, missed: [] }],
    ['nothing once it was said', '2027-01-20T07:01:00Z', '2027-01-20', undefined],
    ['today, late, after a start at nine', '2027-01-20T09:00:00Z', '2027-01-19', { day: day('2027-01-20'), late: true, missed: [] }],
    [
      'one message for several missed mornings',
      '2027-01-20T07:00:00Z',
      '2027-01-17',
      { day: day('2027-01-20'), late: false, missed: [day('2027-01-18'), day('2027-01-19')] },
    ],
    ['nothing before seven, though yesterday was missed', '2027-01-20T05:00:00Z', '2027-01-18', undefined],
    ['today for a studio that never had one', '2027-01-20T07:00:00Z', undefined, { day: day('2027-01-20'), late: false, missed: [] }],
    ['nothing when the clock was set back to yesterday', '2027-01-19T12:00:00Z', '2027-01-20', undefined],
    [
      'today, though a wrong clock once claimed a day in 2031',
      '2027-01-20T07:00:00Z',
      '2031-05-01',
      { day: day('2027-01-20'), late: false, missed: [] },
    ],
  ];
  it.each(table)('%s', (_, now, last, due) => {
    expect(dueMorning(at(now), london, last === undefined ? undefined : day(last))).toEqual(due);
  });

  it('is the week ahead on Mondays, and still on Tuesday when Monday was missed', () => {
    const mondays: Schedule = { ...london, on: 'monday' };
    expect(dueMorning(at('2027-01-18T07:00:00Z'), mondays, day('2027-01-11'))).toEqual({ day: '2027-01-18', late: false, missed: [] });
    expect(dueMorning(at('2027-01-19T08:00:00Z'), mondays, day('2027-01-11'))).toEqual({ day: '2027-01-18', late: true, missed: [] });
    expect(dueMorning(at('2027-01-19T08:00:00Z'), mondays, day('2027-01-18'))).toBeUndefined();
    expect(dueMorning(at('2027-01-19T08:00:00Z'), mondays, undefined)).toBeUndefined();
    expect(dueMorning(at('2027-01-18T07:00:00Z'), mondays, day('2026-12-28'))?.missed).toEqual(['2027-01-04', '2027-01-11']);
  });
});

describe('the hour on clock-change days', () => {
  const table: readonly (readonly [zone: string, day: string, hour: string, utc: string])[] = [
    ['Europe/London', '2027-03-27', '07:00', '2027-03-27T07:00:00Z'],
    ['Europe/London', '2027-03-28', '07:00', '2027-03-28T06:00:00Z'],
    ['Europe/London', '2027-10-31', '07:00', '2027-10-31T07:00:00Z'],
    ['Europe/London', '2027-03-28', '01:30', '2027-03-28T01:30:00Z'], // 01:30 does not exist: an hour later, 02:30 summer time
    ['Europe/London', '2027-10-31', '01:30', '2027-10-31T00:30:00Z'], // 01:30 comes twice: the first
    ['Australia/Sydney', '2027-04-03', '07:00', '2027-04-02T20:00:00Z'],
    ['Australia/Sydney', '2027-04-04', '07:00', '2027-04-03T21:00:00Z'],
    ['Australia/Sydney', '2027-10-03', '07:00', '2027-10-02T20:00:00Z'],
    ['America/New_York', '2027-03-13', '07:00', '2027-03-13T12:00:00Z'],
    ['America/New_York', '2027-03-14', '07:00', '2027-03-14T11:00:00Z'],
    ['America/New_York', '2027-11-07', '07:00', '2027-11-07T12:00:00Z'],
    ['Australia/Brisbane', '2027-10-03', '07:00', '2027-10-02T21:00:00Z'], // no summer time
  ];
  it.each(table)('%s %s at %s', (timeZone, date, hour, utc) => {
    expect(instantOf(day(date), { at: hour, timeZone })).toBe(at(utc));
  });

  // Every change of the year in these zones falls into one of these weeks.
  const weeks = ['2027-03-11', '2027-03-25', '2027-04-01', '2027-09-30', '2027-10-28', '2027-11-04'];
  const zones = ['Europe/London', 'Australia/Sydney', 'America/New_York', 'Australia/Brisbane'];
  it.each(zones)('gives %s one reminder on each day of the weeks with a change, and none twice', (timeZone) => {
    for (const hour of ['07:00', '01:30', '02:30']) {
      for (const first of weeks) {
        const midnight = { at: '00:00', timeZone };
        const said: string[] = [];
        let last: Day | undefined = addDays(day(first), -1);
        for (let now = instantOf(day(first), midnight); now < instantOf(addDays(day(first), 7), midnight); now += 30 * 60_000) {
          const due = dueMorning(now, { at: hour, timeZone }, last);
          if (!due) continue;
          expect(due).toMatchObject({ late: false, missed: [] });
          said.push(due.day);
          last = due.day;
        }
        expect(said).toEqual([0, 1, 2, 3, 4, 5, 6].map((days) => addDays(day(first), days)));
      }
    }
  });
});

describe('a daily run', () => {
  let store: OpenStore;
  let runs: DailyRun[];
  let mornings: Morning[];
  const minute = 60_000;
  const silent = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const start = (schedule: () => Schedule = () => london, run?: (morning: Morning) => void): DailyRun => {
    const claim = (morning: Morning) => {
      if (store.remind('W-loft', 'bench', 'morning', morning.day, [], Date.now())) mornings.push(morning);
    };
    const started = startDailyRun({
      name: 'morning',
      schedule,
      clock: { now: () => Date.now() },
      log: silent,
      last: () => store.lastReminder('W-loft', 'bench', 'morning'),
      run: run ?? claim,
    });
    runs.push(started);
    return started;
  };
  const from = (text: string) => vi.setSystemTime(at(text));

  beforeEach(() => {
    vi.useFakeTimers();
    from('2027-01-20T06:30:00Z');
    store = openStore({ path: ':memory:', powerSafe: false });
    runs = [];
    mornings = [];
  });
  afterEach(async () => {
    await Promise.all(runs.map((each) => each.stop()));
    store.close();
    expect(vi.getTimerCount()).toBe(0);
    vi.useRealTimers();
  });

  it('runs at the hour, to the second, and once', async () => {
    let ranAt = 0;
    start(
      () => london,
      (morning) => {
        ranAt ||= Date.now();
        store.remind('W-loft', 'bench', 'morning', morning.day, [], Date.now());
      },
    );
    await vi.advanceTimersByTimeAsync(3 * 60 * minute);
    expect(new Date(ranAt).toISOString()).toMatch(/^2027-01-20T07:00:00/);
  });

  it('runs on the morning before, of and after a clock change', async () => {
    from('2027-03-27T06:30:00Z');
    start();
    await vi.advanceTimersByTimeAsync(2.1 * 24 * 60 * minute);
    expect(mornings).toEqual(['2027-03-27', '2027-03-28', '2027-03-29'].map((date) => ({ day: date, late: false, missed: [] })));
  });

  it('says it once whatever is restarted or runs beside it', async () => {
    start();
    start();
    await vi.advanceTimersByTimeAsync(60 * minute);
    await Promise.all(runs.map((each) => each.stop()));
    start();
    await vi.advanceTimersByTimeAsync(60 * minute);
    expect(mornings).toHaveLength(1);
  });

  it('catches up late, in one message, after the computer slept for three days', async () => {
    start();
    await vi.advanceTimersByTimeAsync(60 * minute);
    from('2027-01-23T10:00:00Z'); // asleep: the clock went on, the timers did not
    await vi.advanceTimersByTimeAsync(2 * minute);
    expect(mornings).toEqual([
      { day: '2027-01-20', late: false, missed: [] },
      { day: '2027-01-23', late: true, missed: ['2027-01-21', '2027-01-22'] },
    ]);
  });

  it('tries again a minute later when the run fails', async () => {
    let tries = 0;
    start(
      () => london,
      () => {
        tries += 1;
        if (tries < 3) throw new Error('the disk is full');
      },
    );
    await vi.advanceTimersByTimeAsync(40 * minute);
    expect(tries).toBe(3);
  });

  it('follows a new hour in the settings the same day', async () => {
    let hour = '09:00';
    start(() => ({ ...london, at: hour }));
    await vi.advanceTimersByTimeAsync(45 * minute); // 07:15
    expect(mornings).toEqual([]);
    hour = '07:30';
    await vi.advanceTimersByTimeAsync(16 * minute);
    expect(mornings).toEqual([{ day: '2027-01-20', late: false, missed: [] }]);
  });
});
