// Days counted within a month: "first saturday in may", "2nd last friday of march", "last saturday of next month", "the last day of february".

import { addDays, type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { forward, nthWeekday } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { monthOfToken, yearFrom } from './day-parts.ts';
import { monthAhead } from './spans.ts';

const places: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  last: -1,
  final: -1,
  penultimate: -2,
};
const month = '(<m:month>|this month|next month|the month|month|the following month)';
const nth = pattern(
  `(the|on the|very)? (<o:ordinal>|first|second|third|fourth|fifth|last|final|penultimate|very last) (<l:word>|to last|from last)? <w:weekday> (in|of|,)? (the)? ${month} (,)? (<y:plain>|next year)?`,
);
// "first or second saturday in july"
const place = '(<ordinal>|first|second|third|fourth|fifth|last|final|penultimate)';
const either = pattern(
  `(the|on the|either the|either|on either the)? ${place} <r:word> (the|maybe the|maybe|possibly the|possibly)? ${place} (to last|last|from last)? <weekday>`,
);
const lastDay = pattern(`(the)? (very)? (last|final|first) day (in|of) (the)? ${month} (<y:plain>)?`);

/** What such a day begins with. */
export const nthDayOpens = [either, nth, lastDay];

const yearSaid = (token: Token | undefined, tokens: readonly Token[], context: ReadingContext, words: string): number | undefined =>
  words.endsWith('next year') ? yearOf(context.today) + 1 : yearFrom(token, tokens);

// The month that is named or counted from this one.
const inMonth = (
  token: Token | undefined,
  words: string,
  context: ReadingContext,
  dayIn: (year: number, month: number) => Day | undefined,
  year: number | undefined,
): Day | undefined => {
  const { today } = context;
  if (token !== undefined)
    return year === undefined ? forward(today, (each) => dayIn(each, monthOfToken(token))) : dayIn(year, monthOfToken(token));
  const first = monthAhead(today, /(next|following) month/.test(words) ? 1 : 0);
  return dayIn(yearOf(first), monthOf(first));
};

const oneDay = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const day = lastDay.at(tokens, index, tokens.length);
  const match = day ?? nth.at(tokens, index, tokens.length);
  if (match === undefined) return undefined;
  const { o, l, w, m, y } = match.kept;
  const texts = tokens.slice(index, match.end).map((token) => token.text);
  const words = texts.join(' ');
  const next = tokens[match.end];
  if (m !== undefined && !/ (of|in) /.test(words)) {
    // "the second sat may be better", "first sat march 13"
    if (y !== undefined || next?.number !== undefined || (m.text === 'may' && next?.kind === 'word')) return undefined;
  }
  if (l !== undefined && l.text !== 'last') return undefined;
  const year = yearSaid(y, tokens, context, words);
  const end = y !== undefined && year === undefined ? match.end - 1 : match.end;
  const dayIn = (inYear: number, ofMonth: number): Day | undefined => {
    if (day !== undefined) {
      const first = dayOf(inYear, ofMonth, 1);
      return texts.includes('first') || first === undefined ? first : addDays(monthAhead(first, 1), -1);
    }
    const said = o === undefined ? texts.map((text) => places[text]).find((place) => place !== undefined) : Number(o.number?.amount);
    const counted =
      texts
        .slice(1)
        .join(' ')
        .match(/\b(last|to last|from last)\b/) !== null && said !== -1
        ? -(said ?? 9)
        : said;
    return nthWeekday(inYear, ofMonth, Number(w?.means['weekday']), counted ?? 9);
  };
  const read = inMonth(m, words, context, dayIn, year);
  const relative = m === undefined ? { relative: true as const } : {};
  const past = read !== undefined && read < context.today ? { past: true as const } : {};
  return { start: index, end, days: read === undefined ? [] : [read], ...relative, ...past };
};

/** A day counted within a month, if one begins here; of "first or second" both. */
export const nthDay = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = either.at(tokens, index, tokens.length);
  const or = match?.kept['r']?.text === 'or' ? tokens.indexOf(match.kept['r'], index) : -1;
  if (match === undefined || or < 0) return oneDay(tokens, index, context);
  const second = oneDay(tokens, or + 1, context) ?? oneDay(tokens, or + 2, context);
  if (second === undefined) return undefined;
  // The weekday and the month are said once, behind the second.
  const weekday = match.end - 1;
  const first = oneDay([...tokens.slice(0, or), ...tokens.slice(weekday)], or - 1, context);
  if (first === undefined) return undefined;
  return { ...second, start: index, days: [...first.days, ...second.days], why: 'which date' };
};
