// Days the studio works and the minutes they hold. Holidays: Banking and Financial Dealings Act 1971, Schedule 1, with St Andrew's Day Bank Holiday (Scotland)
// Act 2007, for Scotland; Holidays Act 2003 s 44 for New Zealand; Easter Day 2027 is 28 March by the Gregorian computus. (The Acts are quoted from memory.)

import { describe, expect, test } from 'vitest';
import { dayNumber, dayNumbered } from '../../src/planning/day-number.ts';
import { workingDays } from '../../src/planning/working-days.ts';
import type { FactOf } from '../../src/reading/fact.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { aStudio, day, rulesOf } from './a-studio.ts';

const everyDay = { monday: 6, tuesday: 6, wednesday: 6, thursday: 6, friday: 6 };
const daysOf = (settings: Partial<StudioSettings> = {}, crew: readonly FactOf<'crew'>[] = []) =>
  workingDays(rulesOf(aStudio(settings, { crew })));
const on = (days: ReturnType<typeof daysOf>, text: string) => days.on(dayNumber(day(text)));

describe('public holidays', () => {
  test.each<[string, string | undefined, string, string]>([
    ['GB', 'SCT', '2027-01-01', 'New Year'],
    ['GB', 'SCT', '2027-01-04', 'in lieu of 2 January, a Saturday'],
    ['GB', 'SCT', '2027-03-26', 'Good Friday'],
    ['GB', 'SCT', '2027-08-02', 'first Monday of August'],
    ['GB', 'SCT', '2027-11-30', 'St Andrew’s Day'],
    ['GB', 'ENG', '2027-03-29', 'Easter Monday'],
    ['NZ', undefined, '2027-10-25', 'Labour Day, fourth Monday of October'],
  ])('%s %s is closed on %s: %s', (region, subdivision, date) => {
    const where = subdivision === undefined ? { region } : { region, subdivision };
    const { subdivision: _, ...plain } = aStudio().settings;
    const days = workingDays(
      rulesOf({ settings: { ...plain, ...where, bench: { people: 1, hours: everyDay } }, packs: [], crew: [], drying: [] }),
    );
    expect(on(days, date)).toMatchObject({ open: false, minutes: 0, holiday: expect.any(String) });
  });

  test('Easter Monday is no holiday in Scotland', () => {
    expect(on(daysOf({ bench: { people: 1, hours: everyDay } }), '2027-03-29').open).toBe(true);
  });

  test('a studio that is open on holidays works them', () => {
    expect(on(daysOf({ bench: { people: 1, hours: everyDay, openOnHolidays: true } }), '2027-03-26').minutes).toBe(360);
  });

  test('a region nobody keeps holidays for has none, and no trouble', () => {
    expect(on(daysOf({ region: 'XX', bench: { people: 1, hours: everyDay } }), '2027-12-24').open).toBe(true);
  });
});

describe('minutes of a day', () => {
  test('people times their hours; a weekday left out is closed', () => {
    const days = daysOf();
    expect(on(days, '2027-03-09')).toMatchObject({ open: true, minutes: 600 }); // Tuesday
    expect(on(days, '2027-03-08')).toMatchObject({ open: false, minutes: 0 }); // Monday
  });

  test('a closed day is closed', () => {
    const closed = daysOf({ bench: { people: 2, hours: { tuesday: 5 }, closed: ['2027-03-09'], openOnHolidays: true } });
    expect(on(closed, '2027-03-09').open).toBe(false);
  });

  const crew = (fact: Partial<FactOf<'crew'>>): FactOf<'crew'> => ({ fact: 'crew', date: '2027-03-11', words: 'said', ...fact });
  test.each<[string, Partial<FactOf<'crew'>>[], number]>([
    ['3 of us 4 hrs Thursday', [{ people: 3, hours: 4 }], 720],
    ['3 of us Thursday: the usual hours', [{ people: 3 }], 900],
    ['4 hrs Thursday: the usual people', [{ hours: 4 }], 480],
    ['6 hours in all on Thursday', [{ totalHours: 6 }], 360],
    ['one of us is away', [{ people: 1, away: true }], 300],
    ['one of us is away for 2 hours', [{ people: 1, hours: 2, away: true }], 480],
    ['more away than there are', [{ people: 5, away: true }], 0],
    ['3 of us, and then one away', [{ people: 3 }, { people: 1, away: true }], 600],
    ['said again: the later word holds', [{ people: 3 }, { people: 1, hours: 2 }], 120],
    ['nobody Thursday', [{ people: 0 }], 0],
  ])('%s', (_, facts, minutes) => {
    expect(on(daysOf({}, facts.map(crew)), '2027-03-11').minutes).toBe(minutes);
  });

  test('hands on a closed day open it', () => {
    const days = daysOf({}, [crew({ date: '2027-03-13', people: 2, hours: 3 })]); // Saturday
    expect(on(days, '2027-03-13')).toMatchObject({ open: true, minutes: 360 });
  });

  test('a wage without a day changes no day', () => {
    expect(on(daysOf({}, [{ fact: 'crew', people: 2, hours: 8, wage: '14', words: 'two freelancers' }]), '2027-03-11').minutes).toBe(600);
  });

  test('minutes up to a clock time count from nine and end with the day', () => {
    const days = daysOf();
    const thursday = dayNumber(day('2027-03-11'));
    expect(days.minutesBy(thursday, 10 * 60)).toBe(120);
    expect(days.minutesBy(thursday, 8 * 60)).toBe(0);
    expect(days.minutesBy(thursday, 20 * 60)).toBe(600);
  });
});

describe('counting working days', () => {
  const days = daysOf();
  const number = (text: string): number => dayNumber(day(text));
  test.each([
    ['two before Saturday', days.before(number('2027-03-13'), 2), '2027-03-11'],
    ['one before Tuesday', days.before(number('2027-03-09'), 1), '2027-03-05'],
    ['none before Sunday', days.before(number('2027-03-14'), 0), '2027-03-12'],
    ['three after Thursday', days.after(number('2027-03-11'), 3), '2027-03-17'],
    ['on or after Saturday', days.onOrAfter(number('2027-03-13')), '2027-03-16'],
  ])('%s', (_, found, date) => {
    expect(dayNumbered(found)).toBe(date);
  });

  test('the clocks go forward on 28 March 2027 in Scotland: no day is lost or doubled', () => {
    expect(dayNumbered(days.before(number('2027-03-30'), 1))).toBe('2027-03-26');
    expect(dayNumbered(days.after(number('2027-03-26'), 1))).toBe('2027-03-30');
  });

  test('a studio that never opens moves no step', () => {
    const never = daysOf({ bench: { people: 1, hours: {} } });
    expect(never.onOrBefore(number('2027-03-13'))).toBe(number('2027-03-13'));
  });
});
