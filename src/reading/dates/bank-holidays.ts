// Bank holidays of Britain and Ireland: "bank holiday monday in may", "the august bank hol weekend", "late may bank holiday". Two in a month are asked about.

import { addDays, type Day, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { easterSunday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { monthOfToken } from './day-parts.ts';
import { bankHolidayMondays } from './named-days.ts';
import { daysOfWeekend, weekendAround } from './weekends.ts';

const form = pattern(
  '(the|a)? (first|early|start of|second|late|last|end of|other|1 st|2 nd)? (<m:month>)? bank (holiday|hol|hols|holidays) (<w:weekday>|day|weekend|wkend|wknd|wend)? (in|of|,)? (<n:month>)?',
);
/** What a bank holiday begins with. */
export const bankHolidayOpens = [form];
const first = /^(first|early|start|1 st)$/;
const last = /^(second|late|last|end|2 nd)$/;

const inMonth = (context: ReadingContext, month: number): readonly Day[] => {
  const year = yearOf(context.today);
  const days = bankHolidayMondays(year, month, context.region).filter((day) => day >= context.today);
  return days.length > 0 ? days : bankHolidayMondays(year + 1, month, context.region);
};
// With no month said, the next few.
const coming = (context: ReadingContext): readonly Day[] => {
  const year = yearOf(context.today);
  const all = [year, year + 1].flatMap((each) => [
    addDays(easterSunday(each), 1),
    ...(context.region === 'IE' ? [2, 5, 6, 8, 10] : [5, 8]).flatMap((month) => [...bankHolidayMondays(each, month, context.region)]),
  ]);
  return all
    .filter((day) => day > context.today)
    .sort()
    .slice(0, 3);
};

/** The bank holiday that begins at this token. */
export const bankHoliday = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = form.at(tokens, index, tokens.length);
  if (match === undefined) return undefined;
  const { m, n } = match.kept;
  // "bank hol monday 31 may": the day follows.
  if (m === undefined && n === undefined && tokens[match.end]?.number !== undefined) return undefined;
  if (m === undefined && n !== undefined && tokens[match.end - 2]?.text === ',') return undefined;
  const words = tokens.slice(index, match.end).map((token) => token.text);
  const month = m ?? n;
  const all = month === undefined ? coming(context) : inMonth(context, monthOfToken(month));
  const place =
    month === undefined ? undefined : words.some((word) => first.test(word)) ? 0 : words.some((word) => last.test(word)) ? -1 : undefined;
  const days = place === undefined ? all : [all.at(place)].flatMap((day) => day ?? []);
  if (days.length === 0) return undefined;
  const weekday = Number(match.kept['w']?.means['weekday'] ?? 1);
  const weekend = words.some((word) => /^(weekend|wkend|wknd|wend)$/.test(word));
  const within = days.flatMap((day) => [...daysOfWeekend(day)]);
  // "august bank holiday sunday": a day of its weekend.
  const onDay = weekday === 1 ? days : within.filter((day) => weekdayNumber(day) === weekday);
  const choices = weekend ? days.flatMap((day) => [...weekendAround(day)]) : onDay;
  const base = { start: index, end: match.end, days: choices };
  if (weekend) return { ...base, why: 'which day', within };
  return choices.length === 1 ? { ...base, yearAssumed: true } : { ...base, why: 'which day' };
};
