// A day with its month: "14 March", "Feb 27 2027", "sun 14 march", "around 8 march", "march 14 weekend".

import { isA, type Match, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { DateRead } from './date-read.ts';
import { afterMay } from './date-words.ts';
import { asDay, build, insteadOf, monthOfToken, withWeekday, yearFrom } from './day-parts.ts';
import { orElse } from './or-else.ts';
import { daysOfWeekend, weekendAround, weekendBehind } from './weekends.ts';

const dayAndMonth = pattern(
  "(<w:weekday>)? (,)? (the)? (<d:ordinal>|<d:plain>) (-|/|of|day of|,)? (-)? <m:month> (.)? (,|-|/|of)? (')? (<y:plain>)?",
);
const monthAndDay = pattern("(<w:weekday>)? (,)? <m:month> (the|-)? (<d:ordinal>|<d:plain>) (,)? (')? (<y:plain>)?");
// "16 may not 15 may", "may 22 not may 15": only a verb stands before "not" and another word.
const notAnother = pattern('not (on|for|the){0,2} (<number>|<month>|<weekday>)');

/** What such a day begins with. */
export const monthDayOpens = [dayAndMonth, monthAndDay];

/** The day that is named with its month here. */
export const dayWithMonth = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  for (const form of [dayAndMonth, monthAndDay]) {
    const match = form.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const { d, m, y, w } = match.kept;
    const either = d?.number?.or?.length === 2 ? d.number.or.map(Number) : []; // "april 10 or 17"
    const day = asDay(d) ?? either[0];
    if (form === dayAndMonth && isPriceBeforeDay(tokens, index, match)) continue;
    if (day === undefined || (w === undefined && m !== undefined && m.text === 'sun')) continue;
    if (
      m?.text === 'may' &&
      w === undefined &&
      tokens[match.end - 1]?.text !== ',' &&
      d?.number?.form !== 'ordinal' &&
      notAnother.at(tokens, match.end, tokens.length) === undefined &&
      afterMay.test(tokens[match.end]?.text ?? '')
    )
      continue;
    const year = yearFrom(y, tokens);
    const end = y !== undefined && year === undefined ? match.end - 1 : match.end;
    // "may 20 be enough": "may" is a month here only with a day that stands alone.
    if (m?.text === 'may' && form === monthAndDay && tokens[end] !== undefined && isA(tokens[end], 'piece')) continue;
    const date = build(context, monthOfToken(m), day, year);
    const other = either[1] === undefined ? undefined : build(context, monthOfToken(m), either[1], year);
    const read: DateRead = {
      start: index,
      end: trimmed(tokens, end),
      days: [date, other].flatMap((each) => each ?? []),
      ...(other === undefined ? {} : { why: 'which date' as const }),
      ...(date === undefined ? insteadOf(context, monthOfToken(m), day, year) : {}),
      ...(year === undefined ? { yearAssumed: true } : {}),
      ...(date !== undefined && date < context.today ? { past: true } : {}),
    };
    const said = withWeekday(read, w ?? trailingWeekday(tokens, read.end), context);
    const weekend = w === undefined && year === undefined ? weekendBehind.at(tokens, said.end, tokens.length) : undefined;
    if (weekend !== undefined && date !== undefined && said.days.length === 1)
      return { ...said, end: weekend.end, days: weekendAround(date), why: 'which day', within: daysOfWeekend(date) };
    return isRough(tokens, index, d) ? near(said) : orElse(tokens, said, monthOfToken(m), year, context);
  }
  return undefined;
};

// "around 8 march": the day, or the weekend by it.
const isRough = (tokens: readonly Token[], index: number, day: Token | undefined): boolean =>
  day?.number?.approx === true || /^(around|roughly|approx|approximately|circa|about)$/.test(tokens[index - 1]?.text ?? '');
const near = (read: DateRead): DateRead => {
  const [day] = read.days;
  if (day === undefined || read.days.length > 1 || read.past === true) return read;
  return { ...read, days: [...new Set([day, ...weekendAround(day)])].sort(), why: 'which day' };
};

/** Whether the number here is what something costs, or how many they are: "at 25, March 14th". */
export const isPriceOrCount = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@)$/.test(tokens[index - 1]?.text ?? '') ||
  (tokens[index - 1]?.text === 'of' && /^(party|group|table|team|total)$/.test(tokens[index - 2]?.text ?? '')); // "party of 4 march 14"

// "at 25, March 14th": the day is behind the month, and the price before it.
const isPriceBeforeDay = (tokens: readonly Token[], index: number, { kept }: Match): boolean =>
  kept['w'] === undefined &&
  kept['d']?.number?.form === 'plain' &&
  isPriceOrCount(tokens, index) &&
  monthAndDay.at(tokens, tokens.indexOf(kept['m'] as Token), tokens.length) !== undefined;

const trailingWeekday = (tokens: readonly Token[], end: number): Token | undefined => {
  const at = tokens[end]?.text === '(' || tokens[end]?.text === ',' ? end + 1 : end;
  const token = tokens[at];
  return token?.means['weekday'] !== undefined && !/^(week|fortnight)$/.test(tokens[at + 1]?.text ?? '') ? token : undefined;
};

const trimmed = (tokens: readonly Token[], end: number): number => {
  let last = end;
  while (last > 0 && /^(,|-|\/|'|of|\.)$/.test(tokens[last - 1]?.text ?? '')) last -= 1;
  return last;
};
