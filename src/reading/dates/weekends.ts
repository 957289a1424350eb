// Days that are only narrowed to a few: "victoria day weekend", "the weekend of the 12th june", "this weekend", "first week of june", "next month".
// Each is asked about; none is picked.

import { addDays, type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, weekdayNumber, weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build, monthOfToken } from './day-parts.ts';

export const weekendWord = /^(weekend|wkend|wknd|wkd|weekends)$/;

/** The Saturday and Sunday nearest to a day, with the day itself where it makes them a long weekend. */
export const weekendAround = (day: Day): readonly Day[] => {
  const weekday = weekdayNumber(day);
  const saturday = addDays(day, weekday <= 2 ? -weekday - 1 : 6 - weekday);
  const long = weekday === 1 || weekday === 5 ? [day] : [];
  return [...new Set([saturday, addDays(saturday, 1), ...long])].sort();
};

const weekendOf = pattern('(the)? (weekend|wkend|wknd) (of|around|near|nearest)? (the)? (<d:ordinal>|<d:plain>) (of)? <m:month>');
const weekOf = pattern(
  '(the)? (week|wk|w / c|w / e) (of|commencing|beginning|starting|ending)? (the)? (<d:ordinal>|<d:plain>) (of)? <m:month>',
);
const comingWeekend = pattern('(this|next|this coming|coming) (weekend|wkend|wknd)');
const weekOfMonth = pattern('(the)? (<ordinal>|first|second|third|last) (week|wk|weekend|wkend) (of|in) (the)? <m:month>');
const nextMonth = pattern('(next month|month after next)');

const saturdays = (context: ReadingContext, month: number, year: number): readonly Day[] =>
  weekdaysOfMonth(year, month, 6).filter((day) => day >= context.today);

export const narrowed = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const { today } = context;
  const asked = (end: number, days: readonly Day[]): DateRead | undefined =>
    days.length === 0 ? undefined : { start: index, end, days, why: 'which day', relative: true };
  const around = weekendOf.at(tokens, index, tokens.length);
  if (around !== undefined) {
    const day = build(context, monthOfToken(around.kept['m']), asDay(around.kept['d']) ?? 0, undefined);
    return day === undefined ? { start: index, end: around.end, days: [] } : asked(around.end, weekendAround(day));
  }
  const inWeek = weekOf.at(tokens, index, tokens.length);
  const said = inWeek === undefined ? undefined : build(context, monthOfToken(inWeek.kept['m']), asDay(inWeek.kept['d']) ?? 0, undefined);
  if (inWeek !== undefined && said !== undefined) {
    const monday = addDays(said, 1 - weekdayNumber(said));
    return asked(
      inWeek.end,
      [5, 6, 7].map((weekday) => addDays(monday, weekday - 1)),
    );
  }
  const coming = comingWeekend.at(tokens, index, tokens.length);
  if (coming !== undefined) {
    const saturday = comingWeekday(today, 6);
    const both = [saturday, addDays(saturday, 1)];
    return asked(coming.end, tokens[index]?.text === 'next' ? [...both, ...both.map((day) => addDays(day, 7))] : both);
  }
  const week = weekOfMonth.at(tokens, index, tokens.length);
  const month = week === undefined ? undefined : monthOfToken(week.kept['m']);
  if (week !== undefined && month !== undefined)
    return asked(week.end, saturdays(context, month, yearOf(today) + (month < monthOf(today) ? 1 : 0)));
  const next = nextMonth.at(tokens, index, tokens.length);
  if (next === undefined || (tokens[index - 1]?.text === 'of' && tokens[index - 2]?.number?.form === 'ordinal')) return undefined;
  const ahead = monthOf(today) + (tokens[index]?.text === 'next' ? 0 : 1);
  const first = dayOf(yearOf(today) + Math.floor(ahead / 12), (ahead % 12) + 1, 1) ?? today;
  return asked(next.end, saturdays(context, monthOf(first), yearOf(first)));
};
