// A day without a clock or a zone: 'YYYY-MM-DD'. Text sorts in date order and goes into JSON unchanged; the arithmetic is Temporal's.

import { Temporal } from 'temporal-polyfill';
import { remembered } from './remembered.ts';

declare const dayBrand: unique symbol;
export type Day = string & { readonly [dayBrand]: true };

export const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;
export type Weekday = (typeof weekdays)[number];

const plain = (day: Day): Temporal.PlainDate => Temporal.PlainDate.from(day);
const toDay = (date: Temporal.PlainDate): Day => date.toString() as Day;

/** Reads 'YYYY-MM-DD'; undefined when there is no such day (31 February). */
export const parseDay = (text: string): Day | undefined => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  return dayOf(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10)));
};

const calendarDay = remembered((asked): Day | undefined => {
  const [year, month, day] = asked.split('/').map(Number) as [number, number, number];
  try {
    // Asking costs less than being refused: most days that are tried and do not exist are a 29th to 31st.
    const date = Temporal.PlainDate.from({ year, month, day }, { overflow: 'constrain' });
    return date.month === month && date.day === day ? toDay(date) : undefined;
  } catch {
    return undefined;
  }
});
/** The day with this year, month (1–12) and day of month; undefined when there is none. */
export const dayOf = (year: number, month: number, dayOfMonth: number): Day | undefined => calendarDay(`${year}/${month}/${dayOfMonth}`);

/** The day it is at this instant in this time zone (IANA name). */
export const dayAt = (epochMilliseconds: number, timeZone: string): Day =>
  toDay(Temporal.Instant.fromEpochMilliseconds(epochMilliseconds).toZonedDateTimeISO(timeZone).toPlainDate());

// The same few days are asked for over and over: every "friday" of a message is so many days from today.
const added = remembered((asked) => {
  const [day, days] = asked.split(' ');
  return toDay(plain(day as Day).add({ days: Number(days) }));
});
export const addDays = (day: Day, days: number): Day => added(`${day} ${days}`);

/** Days from one to the other; negative when the second is earlier. */
export const daysBetween = (from: Day, to: Day): number => plain(from).until(plain(to), { largestUnit: 'day' }).days;

/** Every day of the month this one is in. */
export const daysOfMonth = (day: Day): readonly Day[] =>
  Array.from({ length: plain(day).daysInMonth }, (_, at) => `${day.slice(0, 8)}${String(at + 1).padStart(2, '0')}` as Day);

export const weekdayOf = (day: Day): Weekday => weekdays[plain(day).dayOfWeek - 1] as Weekday;
export const yearOf = (day: Day): number => Number(day.slice(0, 4));
export const monthOf = (day: Day): number => Number(day.slice(5, 7));
export const dayOfMonth = (day: Day): number => Number(day.slice(8, 10));
