// Reads a date written at one place: "14 March", "Feb 27 2027", "3/4", "sun 14 march", "Saturday fortnight", "first saturday in june".
// A form gives one day, several possible days, or a day that does not exist; it never picks between two.

import { addDays } from '../../values/day.ts';
import { beginsAt, isA, type Match, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { bankHoliday, bankHolidayOpens } from './bank-holidays.ts';
import { weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { afterMay } from './date-words.ts';
import { asDay, build, insteadOf, monthOfToken, withWeekday, yearFrom } from './day-parts.ts';
import { besideOpens, dayBeside } from './days-beside.ts';
import { named, namedOpens, several } from './named-dates.ts';
import { nthDay, nthDayOpens } from './nth-days.ts';
import { numberedMonth, numberedOpens, strokedYear } from './numbered-months.ts';
import { oneAfter, oneAfterOpens } from './one-after.ts';
import { orElse } from './or-else.ts';
import { dayWithWeekday, partOpens, vague, weekdayWithDay } from './part-dates.ts';
import { relativeForms, relativeOpens } from './relative-days.ts';
import { slashForms } from './slash-dates.ts';
import { daysOfWeekend, narrowed, narrowedOpens, weekendAround, weekendBehind } from './weekends.ts';

const dayAndMonth = pattern(
  "(<w:weekday>)? (,)? (the)? (<d:ordinal>|<d:plain>) (-|/|of|day of|,)? (-)? <m:month> (.)? (,|-|/|of)? (')? (<y:plain>)?",
);
const monthAndDay = pattern("(<w:weekday>)? (,)? <m:month> (the|-)? (<d:ordinal>|<d:plain>) (,)? (')? (<y:plain>)?");
const twoDays = pattern(
  '(<w:weekday>)? (the)? (<d:ordinal>|<d:plain>) (-|to|and|or|&|/|through|thru|till|until) (<weekday>)? (the)? (<e:ordinal>|<e:plain>) (of)? <m:month> (<y:plain>)?',
);
const slashTwoDays = pattern('(<weekday>)? (,)? <s:slashed> (of)? <m:month>');
const weekdayInMonth = pattern('(a|one|some)? <w:weekday> in <m:month>');
// "16 may not 15 may", "may 22 not may 15": only a verb stands before "not" and another word.
const notAnother = pattern('not (on|for|the){0,2} (<number>|<month>|<weekday>)');
const sunMonth = /^(sun|mar|may|sat|wed)$/;

const monthForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
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

const isPrice = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@)$/.test(tokens[index - 1]?.text ?? '') ||
  (tokens[index - 1]?.text === 'of' && /^(party|group|table|team|total)$/.test(tokens[index - 2]?.text ?? '')); // "party of 4 march 14"

// "at 25, March 14th": the day is behind the month, and the price before it.
const isPriceBeforeDay = (tokens: readonly Token[], index: number, { kept }: Match): boolean =>
  kept['w'] === undefined &&
  kept['d']?.number?.form === 'plain' &&
  isPrice(tokens, index) &&
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

const monthPlaces = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const both = twoDays.at(tokens, index, tokens.length);
  const priced = both?.kept['d']?.number?.form === 'plain' && isPrice(tokens, index);
  if (both !== undefined && !priced) {
    const { d, e, m, y } = both.kept;
    const days = [d, e].flatMap((token) => build(context, monthOfToken(m), asDay(token) ?? 0, yearFrom(y)) ?? []);
    if (days.length === 2)
      return { start: index, end: y !== undefined && yearFrom(y) === undefined ? both.end - 1 : both.end, days, why: 'which date' };
  }
  const slashed = slashTwoDays.at(tokens, index, tokens.length);
  if (slashed !== undefined) {
    const days = (slashed.kept['s']?.number?.parts ?? []).flatMap(
      (day) => build(context, monthOfToken(slashed.kept['m']), day, undefined) ?? [],
    );
    if (days.length === 2) return { start: index, end: slashed.end, days, why: 'which date' };
  }
  const some = weekdayInMonth.at(tokens, index, tokens.length);
  if (some !== undefined)
    return several(index, some.end, context, (year) =>
      weekdaysOfMonth(year, monthOfToken(some.kept['m']), Number(some.kept['w']?.means['weekday'])),
    );
  return undefined;
};

// All that a date begins with: where none of these could begin, there is no date, and most words of a message are passed over by one look.
const opens = [
  pattern('(the|this|on|next|coming) (coming)? <weekday>'),
  pattern('(<slashed>|<weekday>)'),
  dayAndMonth,
  monthAndDay,
  twoDays,
  slashTwoDays,
  weekdayInMonth,
  ...besideOpens,
  ...bankHolidayOpens,
  ...nthDayOpens,
  ...narrowedOpens,
  ...numberedOpens,
  ...partOpens,
  ...namedOpens,
  ...oneAfterOpens,
  ...relativeOpens,
];

const readAt = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const token = tokens[index];
  if (token === undefined || token.kind === 'line' || (token.kind === 'sign' && token.text !== "'")) return undefined;
  if (!beginsAt(opens, tokens, index)) return undefined;
  // "the friday, 12 feb", "next saturday the 30th"
  if (/^(the|this|on|next|coming)$/.test(token.text)) {
    const at = tokens[index + 1]?.text === 'coming' ? index + 2 : index + 1;
    const led = tokens[at]?.means['weekday'] !== undefined;
    const whole = led ? (monthForms(tokens, at, context) ?? soon(weekdayWithDay(tokens, at, context), context)) : undefined;
    if (whole !== undefined) return { ...whole, start: index };
  }
  const weekday = token.means['weekday'] !== undefined;
  const beside = dayBeside(tokens, index, context);
  if (beside !== undefined) return beside;
  const bank = bankHoliday(tokens, index, context);
  if (bank !== undefined) return bank;
  const counted = nthDay(tokens, index, context);
  if (counted !== undefined) return counted;
  const few = narrowed(tokens, index, context);
  if (few !== undefined) return few;
  if (
    token.number !== undefined ||
    weekday ||
    token.means['month'] !== undefined ||
    token.text === 'the' ||
    token.text === 'a' ||
    token.text === 'one'
  ) {
    const read =
      numberedMonth(tokens, index, context) ??
      strokedYear(tokens, index, context) ??
      monthPlaces(tokens, index, context) ??
      monthForms(tokens, index, context) ??
      slashForms(tokens, index, context) ??
      dayWithWeekday(tokens, index, context);
    if (read !== undefined) return read;
  }
  if (weekday) {
    const read = weekdayWithDay(tokens, index, context);
    if (read !== undefined) return read;
  }
  if (sunMonth.test(token.text) && !weekday && token.means['month'] === undefined) return undefined;
  return (
    named(tokens, index, context) ??
    oneAfter(tokens, index, context) ??
    relativeForms(tokens, index, context) ??
    vague(tokens, index, context)
  );
};

// "next saturday the 30th": within a fortnight the two agree; "next friday the 12th" is asked for its month.
const soon = (read: DateRead | undefined, { today }: ReadingContext): DateRead | undefined =>
  read?.why !== undefined || read?.days.every((day) => day <= addDays(today, 14)) ? read : undefined;

// Many phrases ask about the same places, so what was read of the last message is kept.
let lastTokens: readonly Token[] | undefined;
let lastContext: ReadingContext | undefined;
let places: (DateRead | null | undefined)[] = [];

/** The date that begins at this token, if one does. */
export const dateAt = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  if (tokens !== lastTokens || context !== lastContext) {
    lastTokens = tokens;
    lastContext = context;
    places = [];
  }
  const known = places[index];
  if (known !== undefined) return known ?? undefined;
  const read = readAt(tokens, index, context);
  places[index] = read ?? null;
  return read;
};
