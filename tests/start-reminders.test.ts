// The whole path of a reminder, from the studio's clock to the outbox, on the days around both clock changes of four zones.
// Change dates in 2027: Great Britain last Sundays of March and October at 01:00 UTC (Summer Time Order 2002); United States second Sunday of
// March and first of November at 02:00 (15 U.S.C. 260a); New South Wales first Sundays of April and October (Standard Time Act 1987 (NSW)).
// Japan keeps one time all year (Daylight Saving Time Act repealed in 1952; from memory).

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Reminders, startReminders } from '../src/start-reminders.ts';
import type { OpenStore } from '../src/store/sqlite-store.ts';
import type { StudioSettings } from '../src/studio/settings.ts';
import { addDays, type Day } from '../src/values/day.ts';
import { type BenchTalk, benchTalk, textOf, workspace } from './support/bench-talk.ts';
import { demoStudio } from './support/converse.ts';

const silent = { info: () => undefined, warn: () => undefined, error: (line: unknown) => expect(line).toBeUndefined() };
const minute = 60_000;
const hours = { monday: 8, tuesday: 8, wednesday: 8, thursday: 8, friday: 8, saturday: 8, sunday: 8 };
const reminder = { at: '07:00', channel: 'C-bench' };

const studioIn = (timeZone: string, more: Partial<NonNullable<StudioSettings['reminder']>> = {}): StudioSettings => ({
  ...demoStudio,
  timeZone,
  bench: { people: 1, hours, openOnHolidays: true },
  reminder: { ...reminder, ...more },
});

let talk: BenchTalk;
let running: Reminders[];

const clock = { now: () => Date.now() };
const start = (store: OpenStore, settings: StudioSettings): Reminders => {
  const started = startReminders({ store, clock, settings, workspace, log: silent, onQueued: () => undefined });
  running.push(started);
  return started;
};

/** What waits to be posted now, with the moment it was queued at. */
const said = (): readonly string[] => talk.posted().map(({ about, reply }) => `${about} ${textOf(reply).split('\n')[0]}`);

beforeEach(() => {
  vi.useFakeTimers();
  running = [];
});
afterEach(async () => {
  await Promise.all(running.map((one) => one.stop()));
  talk.close();
  vi.useRealTimers();
});

describe('the morning list around a clock change', () => {
  const table: readonly (readonly [zone: string, change: string, before: string, after: string])[] = [
    ['Europe/London', '2027-03-28', '07:00Z', '06:00Z'],
    ['Europe/London', '2027-10-31', '06:00Z', '07:00Z'],
    ['Australia/Sydney', '2027-04-04', '20:00Z', '21:00Z'],
    ['Australia/Sydney', '2027-10-03', '21:00Z', '20:00Z'],
    ['America/New_York', '2027-03-14', '12:00Z', '11:00Z'],
    ['America/New_York', '2027-11-07', '11:00Z', '12:00Z'],
    ['Asia/Tokyo', '2027-03-28', '22:00Z', '22:00Z'],
  ];

  it.each(table)(
    '%s, %s: at seven on the studio’s clock the day before, that day and the day after',
    async (zone, change, before, after) => {
      const days = [addDays(change as Day, -1), change as Day, addDays(change as Day, 1)];
      const settings = studioIn(zone);
      const begin = `${addDays(change as Day, -3)}T12:00:00Z`;
      talk = benchTalk({ now: begin, studio: settings });
      talk.say('t1', `300 buttonholes, dried, event ${addDays(change as Day, 6)}`); // every day has some of them
      vi.setSystemTime(Date.parse(begin));
      const runs = start(talk.store, settings);
      await runs.check();
      talk.posted();
      for (const day of days) {
        // East of Greenwich the morning is still the day before by universal time.
        const ahead = zone.startsWith('A') && !zone.startsWith('America');
        const date = ahead ? addDays(day, -1) : day;
        const at = Date.parse(`${date}T${day === days[0] ? before : after}`.replace('Z', ':00Z'));
        vi.setSystemTime(at - minute);
        await runs.check();
        expect(said()).toEqual([]);
        vi.setSystemTime(at);
        await runs.check();
        expect(said()).toEqual([expect.stringMatching(new RegExp(`^${day} `))]);
        vi.setSystemTime(at + minute);
        await runs.check();
        expect(said()).toEqual([]);
      }
    },
  );
});

describe('reminders of a studio', () => {
  it('say each kind once on a Monday, whatever runs beside or is restarted, and in its own hour', async () => {
    const settings = studioIn('Europe/London', { nudgeAt: '15:00', weekAheadOn: 'monday', person: 'D-isla' });
    talk = benchTalk({ now: '2027-03-05T12:00:00Z', studio: settings });
    talk.say('t1', '300 buttonholes, dried, event 20 March');
    vi.setSystemTime(Date.parse('2027-03-05T12:00:00Z')); // Friday
    const runs = [start(talk.store, settings), start(talk.store, settings)];
    for (const run of runs) await run.check();
    talk.posted();
    const heard: string[] = [];
    for (let at = Date.parse('2027-03-08T06:00:00Z'); at < Date.parse('2027-03-08T20:00:00Z'); at += 20 * minute) {
      vi.setSystemTime(at);
      for (const run of runs) await run.check();
      if (at === Date.parse('2027-03-08T12:00:00Z')) {
        await runs[1]?.stop();
        runs[1] = start(talk.store, settings);
      }
      heard.push(...talk.posted().map(({ to, id }) => `${new Date(at).toISOString().slice(11, 16)} ${to.channel} ${id.split('/')[2]}`));
    }
    expect(heard.sort()).toEqual([
      '07:00 C-bench morning',
      '07:00 C-bench week ahead',
      '07:00 D-isla morning',
      '07:00 D-isla week ahead',
      '15:00 C-bench nudge',
      '15:00 D-isla nudge',
    ]);
  });

  it('say nothing until a channel or a person is named', async () => {
    const { reminder: _, ...nobody } = demoStudio;
    talk = benchTalk({ now: '2027-03-10T08:00:00Z', studio: nobody });
    talk.say('t1', '40 buttonholes, dried, event 14 March');
    talk.posted();
    vi.setSystemTime(Date.parse('2027-03-10T08:00:00Z'));
    await start(talk.store, nobody).check();
    expect(said()).toEqual([]);
    await start(talk.store, { ...nobody, reminder: { person: 'D-isla' } }).check();
    expect(talk.posted().map(({ to }) => to.channel)).toEqual(['D-isla']);
  });

  it('catch up with one list after five days of not running', async () => {
    const settings = studioIn('Europe/London');
    talk = benchTalk({ now: '2027-03-05T12:00:00Z', studio: settings });
    talk.say('t1', '300 buttonholes, dried, event 20 March');
    vi.setSystemTime(Date.parse('2027-03-05T12:00:00Z'));
    await start(talk.store, settings).check();
    talk.posted();
    vi.setSystemTime(Date.parse('2027-03-10T10:00:00Z'));
    await start(talk.store, settings).check();
    const lists = talk.posted();
    expect(lists).toHaveLength(1);
    expect(textOf(lists[0]?.reply)).toContain('I was not running on Sat 6 March, Sun 7 March, Mon 8 March, Tue 9 March');
  });
});
