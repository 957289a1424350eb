// Whether a reminder is due now, for which day, whether it is late, and which mornings were missed. Plain arithmetic on the studio's own clock:
// 07:00 is 07:00 on both sides of a clock change, and a time that is skipped that night comes an hour later.

import { Temporal } from 'temporal-polyfill';
import { addDays, type Day, dayAt, daysBetween, type Weekday, weekdayOf } from '../values/day.ts';

export interface Schedule {
  readonly at: string; // '07:00', studio time
  readonly timeZone: string; // IANA
  readonly on?: Weekday; // every day when left out
}

export interface Morning {
  readonly day: Day;
  readonly late: boolean;
  readonly missed: readonly Day[]; // earlier mornings nothing was said on, oldest first: said in this one message
}

/** Starting a computer takes a while; only after this many milliseconds is a reminder called late. */
const punctualWithin = 10 * 60_000;

/** The instant a day's reminder falls on, epoch milliseconds. */
export const instantOf = (day: Day, { at, timeZone }: Schedule): number =>
  Temporal.PlainDateTime.from(`${day}T${at}`).toZonedDateTime(timeZone, { disambiguation: 'compatible' }).epochMilliseconds;

/** `last` is the newest day already claimed. undefined when nothing is due. */
export const dueMorning = (now: number, schedule: Schedule, last: Day | undefined): Morning | undefined => {
  const today = dayAt(now, schedule.timeZone);
  const day = scheduledDay(today, schedule.on);
  if (now < instantOf(day, schedule) || last === day) return undefined;
  // A claim further ahead than tomorrow was made by a clock that ran wrong; it must not silence the reminders until then.
  const sane = last !== undefined && daysBetween(today, last) > 1 ? undefined : last;
  if (sane !== undefined && sane > day) return undefined;
  if (sane === undefined && day !== today) return undefined; // a new studio is not told what it never had
  const late = now >= instantOf(day, schedule) + punctualWithin;
  return { day, late, missed: missedBetween(sane, day, schedule.on) };
};

/** Today, or for a weekly reminder the last day it fell on: one missed on Monday is still of use on Tuesday. */
const scheduledDay = (today: Day, on: Weekday | undefined): Day => {
  let day = today;
  while (on !== undefined && weekdayOf(day) !== on) day = addDays(day, -1);
  return day;
};

const missedBetween = (last: Day | undefined, day: Day, on: Weekday | undefined): readonly Day[] => {
  const missed: Day[] = [];
  if (last === undefined) return missed;
  const step = on === undefined ? 1 : 7;
  for (let earlier = addDays(day, -step); earlier > last; earlier = addDays(earlier, -step)) missed.unshift(earlier);
  return missed;
};
