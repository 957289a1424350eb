// Reads a date written at one place: "14 March", "Feb 27 2027", "3/4", "sun 14 march", "Saturday fortnight", "first saturday in june".
// A form gives one day, several possible days, or a day that does not exist; it never picks between two.

import { addDays } from '../../values/day.ts';
import { beginsAt, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { bankHoliday, bankHolidayOpens } from './bank-holidays.ts';
import { weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build, monthOfToken, yearFrom } from './day-parts.ts';
import { besideOpens, dayBeside } from './days-beside.ts';
import { dayWithMonth, isPriceOrCount, monthDayOpens } from './month-days.ts';
import { named, namedOpens, several } from './named-dates.ts';
import { nthDay, nthDayOpens } from './nth-days.ts';
import { numberedMonth, numberedOpens, strokedYear } from './numbered-months.ts';
import { oneAfter, oneAfterOpens } from './one-after.ts';
import { dayWithWeekday, partOpens, vague, weekdayWithDay } from './part-dates.ts';
import { relativeForms, relativeOpens } from './relative-days.ts';
import { slashForms } from './slash-dates.ts';
import { narrowed, narrowedOpens } from './weekends.ts';

const twoDays = pattern(
  '(<w:weekday>)? (the)? (<d:ordinal>|<d:plain>) (-|to|and|or|&|/|through|thru|till|until) (<weekday>)? (the)? (<e:ordinal>|<e:plain>) (of)? <m:month> (<y:plain>)?',
);
const slashTwoDays = pattern('(<weekday>)? (,)? <s:slashed> (of)? <m:month>');
// "april, either the 10th or the 17th"
const monthThenTwo = pattern('<m:month> (,|-|:|,)? (either|on|the){0,2} <d:ordinal> (or|and|&|/) (the)? <e:ordinal>');
const weekdayInMonth = pattern('(a|one|some)? <w:weekday> in <m:month>');
const sunMonth = /^(sun|mar|may|sat|wed)$/;

const monthPlaces = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const both = twoDays.at(tokens, index, tokens.length);
  const priced = both?.kept['d']?.number?.form === 'plain' && isPriceOrCount(tokens, index);
  if (both !== undefined && !priced) {
    const { d, e, m, y } = both.kept;
    const days = [d, e].flatMap((token) => build(context, monthOfToken(m), asDay(token) ?? 0, yearFrom(y, tokens)) ?? []);
    if (days.length === 2)
      return { start: index, end: y !== undefined && yearFrom(y, tokens) === undefined ? both.end - 1 : both.end, days, why: 'which date' };
  }
  const after = monthThenTwo.at(tokens, index, tokens.length);
  if (after !== undefined) {
    const days = [after.kept['d'], after.kept['e']].flatMap(
      (token) => build(context, monthOfToken(after.kept['m']), asDay(token) ?? 0, undefined) ?? [],
    );
    if (days.length === 2) return { start: index, end: after.end, days, why: 'which date' };
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
  ...monthDayOpens,
  twoDays,
  slashTwoDays,
  monthThenTwo,
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
    const whole = led ? (dayWithMonth(tokens, at, context) ?? soon(weekdayWithDay(tokens, at, context), context)) : undefined;
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
      dayWithMonth(tokens, index, context) ??
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
