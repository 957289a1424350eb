// Days as whole numbers (0 = 1 January 1970), so that planning a season is plain arithmetic and no clock or zone can slip in.

import type { Day } from '../values/day.ts';

const daysIn400Years = 146_097;
const daysFromYearZero = 719_468; // from 1 March of year 0 to 1 January 1970

/** The number of this day in the Gregorian calendar; years count from March, so that the leap day comes last. */
export const dayNumber = (day: Day): number => {
  const month = Number(day.slice(5, 7));
  const year = Number(day.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + Number(day.slice(8, 10)) - 1;
  const leaps = Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);
  return year * 365 + leaps + dayOfYear - daysFromYearZero;
};

/** The day with this number; the inverse of dayNumber for the years 0 to 9999. */
export const dayNumbered = (number: number): Day => {
  const days = number + daysFromYearZero;
  const era = Math.floor(days / daysIn400Years);
  const inEra = days - era * daysIn400Years;
  const yearInEra = Math.floor((inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365);
  const dayOfYear = inEra - (365 * yearInEra + Math.floor(yearInEra / 4) - Math.floor(yearInEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const year = yearInEra + era * 400 + (month <= 2 ? 1 : 0);
  const dayOfMonth = dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return `${text(year, 4)}-${text(month, 2)}-${text(dayOfMonth, 2)}` as Day;
};

const text = (number: number, digits: number): string => String(number).padStart(digits, '0');

/** 0 for Monday to 6 for Sunday. */
export const weekdayNumber = (number: number): number => (((number + 3) % 7) + 7) % 7;
