// Which days the studio works and how many bench minutes each has: opening hours by weekday, closed days, public holidays, and what was said about one day
// ("3 of us, 4 hours on Thursday", "Ines is away Friday"). Days are numbers; each is worked out once.

import type { FactOf } from '../reading/fact.ts';
import type { Day } from '../values/day.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumber, dayNumbered, weekdayNumber } from './day-number.ts';
import { publicHolidays } from './public-holidays.ts';

export interface BenchDay {
  readonly open: boolean;
  readonly minutes: number; // people × their minutes
  readonly people: number;
  readonly holiday?: string;
}

export interface WorkingDays {
  on(day: number): BenchDay;
  /** Bench minutes of that day up to this minute after midnight, all hands together. */
  minutesBy(day: number, clock: number): number;
  /** The latest working day on or before this one, or this one when the studio never opens. */
  onOrBefore(day: number): number;
  onOrAfter(day: number): number;
  /** So many working days earlier; 0 is the latest working day on or before. */
  before(day: number, workingDays: number): number;
  after(day: number, workingDays: number): number;
}

const furthest = 800; // days looked through before a studio counts as never open

export const workingDays = (rules: BenchRules): WorkingDays => {
  const known = new Map<number, BenchDay>();
  const said = crewByDay(rules.crew);
  const on = (day: number): BenchDay => {
    const before = known.get(day);
    if (before) return before;
    const found = benchDay(day, rules, said.get(day));
    known.set(day, found);
    return found;
  };
  const nearest = (day: number, step: 1 | -1): number => {
    for (let away = 0; away < furthest; away += 1) if (on(day + step * away).open) return day + step * away;
    return day;
  };
  const move = (day: number, count: number, step: 1 | -1): number => {
    let at = count > 0 ? day : nearest(day, step);
    for (let left = count; left > 0; left -= 1) at = nearest(at + step, step);
    return at;
  };
  return {
    on,
    minutesBy: (day, clock) => Math.min(on(day).minutes, on(day).people * Math.max(0, clock - rules.opensAt)),
    onOrBefore: (day) => nearest(day, -1),
    onOrAfter: (day) => nearest(day, 1),
    before: (day, count) => move(day, count, -1),
    after: (day, count) => move(day, count, 1),
  };
};

const crewByDay = (crew: readonly FactOf<'crew'>[]): ReadonlyMap<number, readonly FactOf<'crew'>[]> => {
  const days = new Map<number, FactOf<'crew'>[]>();
  for (const fact of crew) {
    if (fact.date === undefined) continue;
    const day = dayNumber(fact.date as Day);
    days.set(day, [...(days.get(day) ?? []), fact]);
  }
  return days;
};

const benchDay = (day: number, rules: BenchRules, said: readonly FactOf<'crew'>[] = []): BenchDay => {
  const holiday = rules.openOnHolidays ? undefined : holidayOn(day, rules);
  const usual = rules.minutesByWeekday[weekdayNumber(day)] ?? 0;
  const shut = rules.closed.has(day) || holiday !== undefined || usual === 0;
  let people = rules.people;
  let each = shut ? 0 : usual;
  let awayMinutes = 0;
  for (const fact of said) {
    if (fact.away) {
      const gone = Math.min(people, fact.people ?? 1);
      if (fact.hours === undefined) people -= gone;
      else awayMinutes += gone * Math.min(each, fact.hours * 60);
      continue;
    }
    // A day's own crew replaces the usual one. People named for a closed day without hours work the studio's shortest day.
    people = fact.people ?? Math.max(1, rules.people);
    each =
      fact.totalHours !== undefined
        ? (fact.totalHours * 60) / Math.max(1, people)
        : fact.hours !== undefined
          ? fact.hours * 60
          : usual || shortestDay(rules);
    awayMinutes = 0;
  }
  const minutes = Math.max(0, people * Math.min(each, 24 * 60) - awayMinutes);
  return { open: !shut || minutes > 0, minutes, people, ...(holiday === undefined ? {} : { holiday }) };
};

const shortestDay = (rules: BenchRules): number => {
  const open = rules.minutesByWeekday.filter((minutes) => minutes > 0);
  return open.length === 0 ? 0 : Math.min(...open);
};

const holidayOn = (day: number, rules: BenchRules): string | undefined =>
  publicHolidays(rules.region, rules.subdivision, Number(dayNumbered(day).slice(0, 4))).get(day);
