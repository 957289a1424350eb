// Days that are only narrowed to a few: "victoria day weekend", "the weekend of the 12th june", "this weekend", "first week of june", "next month".
// Each is asked about; none is picked.

import { addDays, type Day, dayOf, daysOfMonth, monthOf, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, weekdayNumber, weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build, monthOfToken } from './day-parts.ts';
import { monthAhead } from './spans.ts';

export const weekendWord = /^(weekend|wkend|wknd|wkd|weekends|w'end|wend|wkends)$/;

/** "labor day long weekend": what stands behind the day. */
export const weekendBehind = pattern("(long|bank holiday|holiday|bank hol)? (weekend|wkend|wknd|wkd|weekends|w'end|wend)");

/** The Saturday and Sunday nearest to a day, with the day itself where it makes them a long weekend. */
export const weekendAround = (day: Day): readonly Day[] => {
  const weekday = weekdayNumber(day);
  const saturday = addDays(day, weekday <= 2 ? -weekday - 1 : 6 - weekday);
  const long = weekday === 1 || weekday === 5 ? [day] : [];
  return [...new Set([saturday, addDays(saturday, 1), ...long])].sort();
};

/** Every day that may be called one of a weekend's, from the Friday to the Monday, and the day it is named after. */
export const daysOfWeekend = (day: Day): readonly Day[] => {
  const [saturday = day] = weekendAround(day).filter((each) => weekdayNumber(each) === 6);
  return [...new Set([...[-1, 0, 1, 2].map((days) => addDays(saturday, days)), day])].sort();
};
/** The days of a month from today on. */
export const monthFrom = (context: ReadingContext, month: number, year: number): readonly Day[] => {
  const first = dayOf(year, month, 1);
  return first === undefined ? [] : daysOfMonth(first).filter((day) => day >= context.today);
};

const weekendOf = pattern('(the)? (weekend|wkend|wknd) (of|around|near|nearest)? (the)? (<d:ordinal>|<d:plain>) (of)? <m:month>');
const weekOf = pattern(
  // "w/c 8 march": the c is read with the number, as if it were about.
  '(the)? (week|wk|w / c|w / e|w /) (of|commencing|beginning|starting|ending)? (the)? (<d:ordinal>|<d:plain>) (of)? <m:month>',
);
const comingWeekend = pattern('(this|next|this coming|coming) (weekend|wkend|wknd)');
const weekOfMonth = pattern('(the)? (<ordinal>|first|second|third|last) (week|wk|weekend|wkend) (of|in) (the)? <m:month>');
const longWeekend = pattern('(<m:month> long (weekend|wkend|wknd)|long (weekend|wkend|wknd) (in|of) <m:month>)');
const endOfWeek = pattern('(the)? end of (next week|the week|this week)');
const nextMonth = pattern('(next month|month after next)');

/** What days narrowed to a few begin with. */
export const narrowedOpens = [weekendOf, weekOf, comingWeekend, weekOfMonth, longWeekend, endOfWeek, nextMonth];

const saturdays = (context: ReadingContext, month: number, year: number): readonly Day[] =>
  weekdaysOfMonth(year, month, 6).filter((day) => day >= context.today);

// "first weekend of june": the one with the first Saturday in it.
const weekendNth = (words: readonly Token[], of: readonly Day[]): Day | undefined => {
  if (!words.some((token) => weekendWord.test(token.text))) return undefined;
  const said = words.find((token) => token.number?.form === 'ordinal');
  const place =
    said === undefined
      ? words.map(({ text }) => ['first', 'second', 'third'].indexOf(text)).find((at) => at >= 0)
      : Number(said.number?.amount) - 1;
  return place === undefined ? (words.some((token) => token.text === 'last') ? of.at(-1) : undefined) : of[place];
};

export const narrowed = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const { today } = context;
  const asked = (end: number, days: readonly Day[], within: readonly Day[] = days): DateRead | undefined =>
    days.length === 0 ? undefined : { start: index, end, days, why: 'which day', relative: true, within };
  const around = weekendOf.at(tokens, index, tokens.length);
  if (around !== undefined) {
    const day = build(context, monthOfToken(around.kept['m']), asDay(around.kept['d']) ?? 0, undefined);
    return day === undefined ? { start: index, end: around.end, days: [] } : asked(around.end, weekendAround(day), daysOfWeekend(day));
  }
  const inWeek = weekOf.at(tokens, index, tokens.length);
  const said = inWeek === undefined ? undefined : build(context, monthOfToken(inWeek.kept['m']), asDay(inWeek.kept['d']) ?? 0, undefined);
  if (inWeek !== undefined && said !== undefined) {
    const monday = addDays(said, 1 - weekdayNumber(said));
    return asked(
      inWeek.end,
      [5, 6, 7].map((weekday) => addDays(monday, weekday - 1)),
      [1, 2, 3, 4, 5, 6, 7].map((weekday) => addDays(monday, weekday - 1)),
    );
  }
  const coming = comingWeekend.at(tokens, index, tokens.length);
  if (coming !== undefined) {
    const saturday = comingWeekday(today, 6);
    const both = [saturday, addDays(saturday, 1)];
    return asked(coming.end, tokens[index]?.text === 'next' ? [...both, ...both.map((day) => addDays(day, 7))] : both);
  }
  const week = weekOfMonth.at(tokens, index, tokens.length) ?? longWeekend.at(tokens, index, tokens.length);
  const month = week === undefined ? undefined : monthOfToken(week.kept['m']);
  if (week !== undefined && month !== undefined) {
    const year = yearOf(today) + (month < monthOf(today) ? 1 : 0);
    const nth = weekendNth(tokens.slice(index, week.end), weekdaysOfMonth(year, month, 6));
    if (nth !== undefined && nth >= today) return asked(week.end, [nth, addDays(nth, 1)], daysOfWeekend(nth));
    return asked(week.end, saturdays(context, month, year), monthFrom(context, month, year));
  }
  const ending = endOfWeek.at(tokens, index, tokens.length);
  if (ending !== undefined) {
    const later = tokens.slice(index, ending.end).some((token) => token.text === 'next') ? 7 : 0;
    const monday = addDays(today, 1 - weekdayNumber(today) + later);
    return asked(
      ending.end,
      [5, 6, 7].map((weekday) => addDays(monday, weekday - 1)),
    );
  }
  const next = nextMonth.at(tokens, index, tokens.length);
  if (next === undefined || (tokens[index - 1]?.text === 'of' && tokens[index - 2]?.number?.form === 'ordinal')) return undefined;
  const first = monthAhead(today, tokens[index]?.text === 'month' ? 2 : 1);
  return asked(next.end, saturdays(context, monthOf(first), yearOf(first)), daysOfMonth(first));
};
