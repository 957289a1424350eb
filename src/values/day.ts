// A day without a clock or a zone: 'YYYY-MM-DD'. Text sorts in date order and goes into JSON unchanged; the arithmetic is Temporal's.

import { Temporal } from 'temporal-polyfill';

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

/** The day with this year, month (1–12) and day of month; undefined when there is none. */
export const dayOf = (year: number, month: number, dayOfMonth: number): Day | undefined => {
  try {
    // Asking costs less than being refused: most days that are tried and do not exist are a 29th to 31st.
    const date = Temporal.PlainDate.from({ year, month, day: dayOfMonth }, { overflow: 'constrain' });
    return date.month === month && date.day === dayOfMonth ? toDay(date) : undefined;
  } catch {
    return undefined;
  }
};

/** The day it is at this instant in this time zone (IANA name). */
export const dayAt = (epochMilliseconds: number, timeZone: string): Day =>
  toDay(Temporal.Instant.fromEpochMilliseconds(epochMilliseconds).toZonedDateTimeISO(timeZone).toPlainDate());

export const addDays = (day: Day, days: number): Day => toDay(plain(day).add({ days }));

/** Days from one to the other; negative when the second is earlier. */
export const daysBetween = (from: Day, to: Day): number => plain(from).until(plain(to), { largestUnit: 'day' }).days;

/** Every day of the month this one is in. */
export const daysOfMonth = (day: Day): readonly Day[] =>
  Array.from({ length: plain(day).daysInMonth }, (_, at) => `${day.slice(0, 8)}${String(at + 1).padStart(2, '0')}` as Day);

export const weekdayOf = (day: Day): Weekday => weekdays[plain(day).dayOfWeek - 1] as Weekday;
export const yearOf = (day: Day): number => Number(day.slice(0, 4));
export const monthOf = (day: Day): number => Number(day.slice(5, 7));
export const dayOfMonth = (day: Day): number => Number(day.slice(8, 10));
