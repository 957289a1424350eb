// Reads a date written at one place: "14 March", "Feb 27 2027", "3/4", "sun 14 march", "Saturday fortnight", "first saturday in june".
// A form gives one day, several possible days, or a day that does not exist; it never picks between two.

import { addDays, type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import { isA, type Pattern, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, forward, nthWeekday, weekdayNumber, weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { bankHolidayMondays, namedDays } from './named-days.ts';
import { relativeForms } from './relative-days.ts';

const dayAndMonth = pattern(
  "(<w:weekday>)? (,)? (the)? (<d:ordinal>|<d:plain>) (-|/|of|day of|,)? (-)? <m:month> (,|-|/|of)? (')? (<y:plain>)?",
);
const monthAndDay = pattern("(<w:weekday>)? (,)? <m:month> (the|-)? (<d:ordinal>|<d:plain>) (,)? (')? (<y:plain>)?");
const twoDays = pattern(
  '(<w:weekday>)? (the)? (<d:ordinal>|<d:plain>) (-|to|and|or|&|/) (<weekday>)? (the)? (<e:ordinal>|<e:plain>) (of)? <m:month> (<y:plain>)?',
);
const slashTwoDays = pattern('<s:slashed> (of)? <m:month>');
const nthForm = pattern('(the)? (<o:ordinal>|first|second|third|fourth|last) <w:weekday> (in|of) <m:month> (<y:plain>)?');
const weekdayInMonth = pattern('(a|one|some)? <w:weekday> in <m:month>');
const bankHoliday = pattern('(<m:month>)? bank holiday (<w:weekday>|weekend)? (in|of)? <n:month>');
const vagueMonth = pattern('(in|early|mid|late|end of|start of|beginning of|middle of|sometime in|around|this|next) (-|the)? <m:month>');
const monthWedding = pattern('(a|an|our|this) <m:month> (wedding|event|party|do|dance|gala)');
const dayOnly = pattern("(on|to|for|it's|its|is|the|by|until) (the)? <d:ordinal>");
const ofNextMonth = pattern('(the)? <d:ordinal> (of)? (next|this) month');
const sunMonth = /^(sun|mar|may|sat|wed)$/;

const monthOfToken = (token: Token | undefined): number => Number(token?.means['month']);
// "27" is a year only where nothing else could be counted by it: not before a piece, not behind a comma.
const yearFrom = (token: Token | undefined, tokens: readonly Token[] = []): number | undefined => {
  const text = token?.number?.amount ?? '';
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

const build = (context: ReadingContext, month: number, day: number, year: number | undefined): Day | undefined => {
  if (year !== undefined) return dayOf(year, month, day);
  const { today } = context;
  const passed = month < monthOf(today) || (month === monthOf(today) && day < Number(today.slice(8)));
  return dayOf(yearOf(today) + (passed ? 1 : 0), month, day);
};

const withWeekday = (read: DateRead, weekday: Token | undefined, context: ReadingContext): DateRead => {
  const [day] = read.days;
  if (weekday === undefined || day === undefined || read.days.length !== 1) return read;
  const said = Number(weekday.means['weekday']);
  if (weekdayNumber(day) === said) return read;
  const near = [addDays(day, -1), addDays(day, 1)].find((other) => weekdayNumber(other) === said);
  const other = near ?? comingWeekday(addDays(day, -4), said, true);
  return { ...read, days: [other < context.today ? addDays(other, 7) : other, day], why: 'which day' };
};

// A bare number before or after a month may be a year's tail or a price; only 1 to 31 is a day.
const asDay = (token: Token | undefined): number | undefined => {
  const text = token?.number?.amount ?? '';
  return /^\d{1,2}$/.test(text) && Number(text) >= 1 && Number(text) <= 99 && token?.number?.max === undefined ? Number(text) : undefined;
};

const monthForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  for (const form of [dayAndMonth, monthAndDay]) {
    const match = form.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const { d, m, y, w } = match.kept;
    const day = asDay(d);
    if (day === undefined || (w === undefined && m !== undefined && m.text === 'sun')) continue;
    if (
      m?.text === 'may' &&
      /^(need|be|have|not|want|take|break|get|do|as|go|still|just|well|also|even|run|end|come)$/.test(tokens[match.end]?.text ?? '')
    )
      continue;
    const year = yearFrom(y, tokens);
    const end = y !== undefined && year === undefined ? match.end - 1 : match.end;
    // "may 20 be enough": "may" is a month here only with a day that stands alone.
    if (m?.text === 'may' && form === monthAndDay && tokens[end] !== undefined && isA(tokens[end], 'piece')) continue;
    const date = build(context, monthOfToken(m), day, year);
    const read: DateRead = {
      start: index,
      end: trimmed(tokens, end),
      days: date === undefined ? [] : [date],
      ...(year === undefined ? { yearAssumed: true } : {}),
      ...(date !== undefined && date < context.today ? { past: true } : {}),
    };
    return withWeekday(read, w ?? trailingWeekday(tokens, read.end), context);
  }
  return undefined;
};

const trailingWeekday = (tokens: readonly Token[], end: number): Token | undefined => {
  const at = tokens[end]?.text === '(' || tokens[end]?.text === ',' ? end + 1 : end;
  const token = tokens[at];
  return token?.means['weekday'] !== undefined && !/^(week|fortnight)$/.test(tokens[at + 1]?.text ?? '') ? token : undefined;
};

const trimmed = (tokens: readonly Token[], end: number): number => {
  let last = end;
  while (last > 0 && /^(,|-|\/|'|of)$/.test(tokens[last - 1]?.text ?? '')) last -= 1;
  return last;
};

const slashForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const weekday = tokens[index]?.means['weekday'] === undefined ? undefined : tokens[index];
  const at = weekday === undefined ? index : tokens[index + 1]?.text === ',' ? index + 2 : index + 1;
  const token = tokens[at];
  const parts = token?.number?.form === 'slashed' ? token.number.parts : undefined;
  if (token === undefined || parts === undefined) return undefined;
  const [a = 0, b = 0, c] = parts;
  // "3/4" without a year is a date only beside words that want one: "10/10 would recommend".
  const short = c === undefined && weekday === undefined ? { relative: true as const } : {};
  const read = (days: readonly Day[], more: Partial<DateRead> = {}): DateRead =>
    withWeekday({ start: index, end: at + 1, days, ...short, ...more }, weekday, context);
  if (c !== undefined && a > 31) {
    const day = dayOf(a, b, c);
    return read(day === undefined ? [] : [day], day !== undefined && day < context.today ? { past: true } : {});
  }
  if (a > 31 || b > 31 || a === 0 || b === 0 || (c === undefined && token.text.includes('-'))) return undefined;
  const year = c === undefined ? undefined : c < 100 ? 2000 + c : c;
  const [day, month] = context.dayFirst ? [a, b] : [b, a];
  const assumed = {
    ...(a <= 12 && b <= 12 && a !== b ? { orderAssumed: true as const } : {}),
    ...(year === undefined ? { yearAssumed: true as const } : {}),
  };
  const said = month <= 12 ? build(context, month, day, year) : undefined;
  if (said !== undefined) return read([said], { ...assumed, ...(said < context.today ? { past: true } : {}) });
  const other = month > 12 && day <= 12 ? build(context, day, month, year) : undefined;
  return read(other === undefined ? [] : [other], { ...assumed, orderAssumed: true });
};

const ordinals: Readonly<Record<string, number>> = { first: 1, second: 2, third: 3, fourth: 4, last: -1 };

const monthPlaces = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const both = twoDays.at(tokens, index, tokens.length);
  if (both !== undefined) {
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
  const nth = nthForm.at(tokens, index, tokens.length);
  if (nth !== undefined) {
    const { o, w, m, y } = nth.kept;
    const place =
      o === undefined
        ? tokens[index]?.text === 'the'
          ? ordinals[tokens[index + 1]?.text ?? '']
          : ordinals[tokens[index]?.text ?? '']
        : Number(o.number?.amount);
    const day = forward(context.today, (year) => nthWeekday(yearFrom(y) ?? year, monthOfToken(m), Number(w?.means['weekday']), place ?? 9));
    return {
      start: index,
      end: y !== undefined && yearFrom(y) === undefined ? nth.end - 1 : nth.end,
      days: day === undefined ? [] : [day],
    };
  }
  const bank = bankHoliday.at(tokens, index, tokens.length);
  if (bank !== undefined)
    return several(index, bank.end, context, (year) => bankHolidayMondays(year, monthOfToken(bank.kept['n']), context.region));
  const some = weekdayInMonth.at(tokens, index, tokens.length);
  if (some !== undefined)
    return several(index, some.end, context, (year) =>
      weekdaysOfMonth(year, monthOfToken(some.kept['m']), Number(some.kept['w']?.means['weekday'])),
    );
  return undefined;
};

const several = (start: number, end: number, context: ReadingContext, daysIn: (year: number) => readonly Day[]): DateRead | undefined => {
  const thisYear = daysIn(yearOf(context.today)).filter((day) => day >= context.today);
  const days = thisYear.length > 0 ? thisYear : daysIn(yearOf(context.today) + 1);
  const [first, ...rest] = days;
  if (first === undefined) return undefined;
  return rest.length === 0 ? { start, end, days } : { start, end, days, why: 'which day' };
};

const byFirstWord = new Map<string, { pattern: Pattern; days: (typeof namedDays)[number][1] }[]>();
for (const [name, days] of namedDays) {
  const first = name.split(' ')[0] ?? '';
  byFirstWord.set(first, [...(byFirstWord.get(first) ?? []), { pattern: pattern(`${name} (<y:plain>)?`), days }]);
}

const named = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  for (const name of byFirstWord.get(tokens[index]?.text ?? '') ?? []) {
    const match = name.pattern.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const year = yearFrom(match.kept['y'], tokens);
    const end = match.kept['y'] !== undefined && year === undefined ? match.end - 1 : match.end;
    const next = tokens[end]?.text ?? '';
    if (/^(card|cards|rush|week|stock|orders)$/.test(next)) return undefined;
    // A christmas party need not be on the day.
    if (/^(party|do|dance|ball|fair|wedding|event|dinner)$/.test(next) && end - index === 1) return undefined;
    if (year !== undefined) return { start: index, end, days: name.days(year, context.region).flatMap((day) => day ?? []) };
    const read = several(index, end, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
    return read === undefined ? { start: index, end, days: [] } : { ...read, yearAssumed: true };
  }
  return undefined;
};

const vague = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const month = vagueMonth.at(tokens, index, tokens.length) ?? monthWedding.at(tokens, index, tokens.length);
  if (month !== undefined && !isA(tokens[month.end] ?? (tokens[index] as Token), 'ordinal')) {
    const read = several(index, month.end, context, (year) => weekdaysOfMonth(year, monthOfToken(month.kept['m']), 6));
    return read === undefined ? undefined : { ...read, relative: true };
  }
  const ahead = ofNextMonth.at(tokens, index, tokens.length);
  if (ahead !== undefined) {
    const next = tokens.slice(index, ahead.end).some((token) => token.text === 'next') ? 1 : 0;
    const month = ((monthOf(context.today) - 1 + next) % 12) + 1;
    const date = dayOf(yearOf(context.today) + (next === 1 && month === 1 ? 1 : 0), month, asDay(ahead.kept['d']) ?? 0);
    return { start: index, end: ahead.end, days: date === undefined ? [] : [date] };
  }
  const day = dayOnly.at(tokens, index, tokens.length);
  const number = asDay(day?.kept['d']);
  // "it's the 13th of march": the month follows, so the day is not alone.
  const after = tokens[day?.end ?? 0]?.text === 'of' ? tokens[(day?.end ?? 0) + 1] : tokens[day?.end ?? 0];
  if (day === undefined || number === undefined || after?.means['month'] !== undefined || after?.text === 'next') return undefined;
  return dayAlone(index, day.end, number, context);
};

/** "the 27th": the next two months that have one. With an event date known, its own month is meant. */
export const dayAlone = (start: number, end: number, number: number, context: ReadingContext): DateRead => {
  const days: Day[] = [];
  for (let ahead = 0, year = yearOf(context.today), month = monthOf(context.today); ahead < 6 && days.length < 3; ahead++) {
    const day = dayOf(year, month, number);
    if (day !== undefined && day >= context.today) days.push(day);
    month = month === 12 ? 1 : month + 1;
    if (month === 1) year += 1;
  }
  return { start, end, days, why: 'which month', relative: true, dayOnly: number };
};

/** The date that begins at this token, if one does. */
export const dateAt = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const token = tokens[index];
  if (token === undefined || token.kind === 'line' || (token.kind === 'sign' && token.text !== "'")) return undefined;
  const weekday = token.means['weekday'] !== undefined;
  if (
    token.number !== undefined ||
    weekday ||
    token.means['month'] !== undefined ||
    token.text === 'the' ||
    ordinals[token.text] !== undefined ||
    token.text === 'bank' ||
    token.text === 'a' ||
    token.text === 'one'
  ) {
    const read = monthPlaces(tokens, index, context) ?? monthForms(tokens, index, context) ?? slashForms(tokens, index, context);
    if (read !== undefined) return read;
  }
  if (sunMonth.test(token.text) && !weekday && token.means['month'] === undefined) return undefined;
  return named(tokens, index, context) ?? relativeForms(tokens, index, context) ?? vague(tokens, index, context);
};
