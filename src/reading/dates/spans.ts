// A stretch of time ahead: "two weeks", "a fortnight", "about three weeks", "a month". Rough ones name no day.

import { addDays, type Day, dayOf, dayOfMonth, monthOf, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';
import { comingWeekday, weekdaysOfMonth } from './calendar-sums.ts';

export interface Span {
  readonly end: number;
  readonly amount: number;
  readonly unit: 'day' | 'week' | 'month';
  /** "about three weeks", "2 or 3 weeks": no day is meant by it. */
  readonly rough: boolean;
}

const stretch =
  "(exactly|precisely|just|another|about|around|roughly|approx|approximately|nearly|almost|under|over|say|like|maybe|~){0,2} (<n:duration>|<c:plain> (day's|week's|month's)|(a|an|one)? (few|couple) (of)? (days|weeks|months)|(a|one)? (day|week|fortnight|month|day's|week's|fortnight's|fortnights|month's)|(a|one) (days|weeks|months)) (')? (or so|ish|or thereabouts|give or take)?";
const form = pattern(stretch);
/** What a span begins with, where a word leads to it and where none does. */
export const spanOpens = [form, pattern(`(in|after|within) ${stretch}`)];
const roughly =
  /^(about|around|roughly|approx|approximately|nearly|almost|under|over|say|like|maybe|few|couple|~|so|ish|thereabouts|take)$/;
const units: readonly (readonly [RegExp, Span['unit'], number])[] = [
  [/^days?$/, 'day', 1],
  [/^weeks?$/, 'week', 1],
  [/^fortnights?$/, 'week', 2],
  [/^months?$/, 'month', 1],
];

/** The span that begins at this token. */
export const spanAt = (tokens: readonly Token[], index: number): Span | undefined => {
  const match = form.at(tokens, index, tokens.length);
  if (match === undefined) return undefined;
  const words = tokens.slice(index, match.end).map((token) => token.text.replace(/'s?$/, ''));
  const { n, c } = match.kept;
  const unit = units.find(([word, name]) => (n === undefined ? words.some((text) => word.test(text)) : n.number?.unit === name));
  const number = (n ?? c)?.number;
  const amount = Number(number?.amount ?? (words.includes('couple') ? 2 : 1)) * (n === undefined ? (unit?.[2] ?? 1) : 1);
  if (unit === undefined || !Number.isInteger(amount) || amount < 1) return undefined;
  const rough = words.some((text) => roughly.test(text)) || isRangeOrChoice(number) || number?.approx === true;
  return { end: match.end, amount, unit: unit[1], rough };
};

/** The first day of the month that lies so many months ahead. */
export const monthAhead = (today: Day, months: number): Day => {
  const ahead = monthOf(today) - 1 + months;
  return dayOf(yearOf(today) + Math.floor(ahead / 12), (ahead % 12) + 1, 1) ?? today;
};

/** The day that lies a span ahead of another one; a month ends where it is too short. */
export const daysAhead = (day: Day, { amount, unit }: Span): Day => {
  if (unit !== 'month') return addDays(day, amount * (unit === 'week' ? 7 : 1));
  const first = monthAhead(day, amount);
  return dayOf(yearOf(first), monthOf(first), dayOfMonth(day)) ?? addDays(monthAhead(day, amount + 1), -1);
};

/** The days to choose from where a span is rough: the day itself and the weekend by it, or the Saturdays of a month. */
export const daysNear = (today: Day, span: Span): readonly Day[] => {
  const day = daysAhead(today, span);
  if (span.unit === 'month') return weekdaysOfMonth(yearOf(day), monthOf(day), 6);
  const saturday = comingWeekday(addDays(day, -4), 6);
  return [...new Set([day, addDays(saturday, -1), saturday, addDays(saturday, 1)])].sort();
};
