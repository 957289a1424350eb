// A day, a month and a year as tokens, put together into a date: which numbers can be a day or a year, which year is meant, and whether the weekday agrees.

import { addDays, type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';

export const monthOfToken = (token: Token | undefined): number => Number(token?.means['month']);
// "27" is a year only where nothing else could be counted by it: not before a piece, not behind a comma.
export const yearFrom = (token: Token | undefined, tokens: readonly Token[]): number | undefined => {
  const text = token?.number?.amount ?? '';
  // "13 feb 2030 start" is half past eight.
  if (
    /^20[3-5][05]$/.test(text) &&
    token !== undefined &&
    /^(start|starts|arrival|hrs|onwards|sharp)$/.test(tokens[tokens.indexOf(token) + 1]?.text ?? '')
  )
    return undefined;
  if (/^20\d{2}$/.test(text)) return Number(text);
  if (!/^[2-9]\d$/.test(text) || token?.text.length !== 2 || token.number?.max !== undefined) return undefined;
  const at = token === undefined ? -1 : tokens.indexOf(token);
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  const counts =
    before?.text === ',' ||
    (after !== undefined && after.kind === 'word' && after.means['material'] === undefined) ||
    after?.number !== undefined;
  return counts ? undefined : 2000 + Number(text);
};

export const build = (context: ReadingContext, month: number, day: number, year: number | undefined): Day | undefined => {
  if (year !== undefined) return dayOf(year, month, day);
  const { today } = context;
  const passed = month < monthOf(today) || (month === monthOf(today) && day < Number(today.slice(8)));
  return dayOf(yearOf(today) + (passed ? 1 : 0), month, day);
};

/** The last day of a month and the one behind it, for a day the month is too short for; none where no month is so long. */
export const insteadOf = (context: ReadingContext, month: number, day: number, year: number | undefined): { instead?: readonly Day[] } => {
  if (day > 31 || month < 1 || month > 12) return {};
  const last = [30, 29, 28].map((each) => build(context, month, each, year)).find((each) => each !== undefined);
  return last === undefined ? {} : { instead: [last, addDays(last, 1)] };
};

export const withWeekday = (read: DateRead, weekday: Token | undefined, context: ReadingContext): DateRead => {
  const [day] = read.days;
  if (weekday === undefined || day === undefined || read.days.length !== 1) return read;
  const said = Number(weekday.means['weekday']);
  if (weekdayNumber(day) === said) return read;
  const near = [addDays(day, -1), addDays(day, 1)].find((other) => weekdayNumber(other) === said);
  const other = near ?? comingWeekday(addDays(day, -4), said, true);
  return { ...read, days: [other < context.today ? addDays(other, 7) : other, day], why: 'which day' };
};

// A bare number before or after a month may be a year's tail or a price; only 1 to 31 is a day.
export const asDay = (token: Token | undefined): number | undefined => {
  const number = token?.number;
  if (number === undefined || number.max !== undefined || number.amount.length > 2) return undefined;
  const day = Number(number.amount);
  return Number.isInteger(day) && day >= 1 ? day : undefined;
};
