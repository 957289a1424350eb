// Date arithmetic the reader needs: the coming weekday, the nth weekday of a month, Easter.

import { addDays, type Day, dayOf, monthOf, weekdayOf, weekdays, yearOf } from '../../values/day.ts';
import { remembered } from '../../values/remembered.ts';

/** Monday 1 … Sunday 7. Asked of the same few days at every weekday of a message. */
export const weekdayNumber: (day: Day) => number = remembered((day) => weekdays.indexOf(weekdayOf(day as Day)) + 1);

/** The next day with this weekday, strictly after `from` unless `orSame`. */
export const comingWeekday = (from: Day, weekday: number, orSame = false): Day => {
  const ahead = (weekday - weekdayNumber(from) + 7) % 7;
  return addDays(from, ahead === 0 && !orSame ? 7 : ahead);
};

/** The nth such weekday of a month, counted from the end when n is −1. */
export const nthWeekday = (year: number, month: number, weekday: number, nth: number): Day | undefined => {
  const days = weekdaysOfMonth(year, month, weekday);
  return nth > 0 ? days[nth - 1] : days.at(nth);
};

export const weekdaysOfMonth = (year: number, month: number, weekday: number): Day[] => {
  const first = dayOf(year, month, 1);
  if (first === undefined) return [];
  const days: Day[] = [];
  for (let day = comingWeekday(first, weekday, true); monthOf(day) === month; day = addDays(day, 7)) days.push(day);
  return days;
};

/** Easter Sunday by the Gregorian computus, whole-number form (Meeus, Astronomical Algorithms, 2nd ed., 1998, ch. 8). */
export const easterSunday = (year: number): Day => {
  const a = year % 19;
  const b = Math.floor(year / 100);
  const c = year % 100;
  const h = (19 * a + b - Math.floor(b / 4) - Math.floor((b - Math.floor((b + 8) / 25) + 1) / 3) + 15) % 30;
  const l = (32 + 2 * (b % 4) + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
  const m = Math.floor((a + 11 * h + 22 * l) / 451);
  const month = Math.floor((h + l - 7 * m + 114) / 31);
  return dayOf(year, month, ((h + l - 7 * m + 114) % 31) + 1) as Day;
};

/** This year's day, or next year's when it has passed. */
export const forward = (today: Day, dayIn: (year: number) => Day | undefined): Day | undefined => {
  const year = yearOf(today);
  const first = dayIn(year);
  if (first !== undefined && first >= today) return first;
  return dayIn(year + 1) ?? first;
};
