// Only a part of a date: a month ("wedding in march"), a day of the month ("on the 27th"), a weekday with its day ("saturday 13th").

import { addDays, type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import { isA, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { weekdayNumber, weekdaysOfMonth } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { asDay, monthOfToken, yearFrom } from './day-parts.ts';
import { several } from './named-dates.ts';
import { monthFrom } from './weekends.ts';

const vagueMonth = pattern(
  "(in|early|mid|late|end of|start of|beginning of|middle of|sometime in|sometime|around|this|next|is|its|it's|be|maybe|probably) (-|the|in|sometime)? <m:month>",
);
// "wedding's gone to april"
const movedTo = pattern(
  '(moved|gone|pushed|shifted|slipped|postponed|changed|back|forward|over) (to|till|until) (early|mid|late)? (-)? <m:month>',
);
const monthFirst = pattern('<m:month> (sometime|some time|time|tbc|tba|ish|somewhere)');
const monthWedding = pattern('(a|an|our|this) <m:month> (wedding|event|party|do|dance|gala)');
const eventMonth = pattern("(wedding|event|party|gala|ceremony|wedding's|event's) (is|in|will be|is in|sometime)? <m:month>");
const dayOnly = pattern(
  "(on|to|for|it's|its|is|the|by|until|wedding|event|ceremony|gala|prom|formal|reception|debs|christening|function) (the)? <d:ordinal>",
);
const monthOfYear = pattern('<m:month> (of|,)? <y:plain>');
const ofNextMonth = pattern('(on|for|is)? (the)? <d:ordinal> (of)? (next|this) month');
// "the 5th or 6th of march", "the 14th day of march", "the 1st sat in may": the month follows further on.
const monthFollows = pattern(
  '((or|and|&|-|to|/|,) (maybe|even)? (the)? (<ordinal>|<plain>) (of|,)? <month>|(,)? (the)? (day) of (the)? <month>|<weekday> (in|of) (the|this|next)? (<month>|month)|of (this|next|the) month)',
);
const weekdayBehind = pattern('(,|-|\\(|is|which is|being)? (a|the|it is a)? <w:weekday> (\\))?');

// "end of feb" is not its first saturday; a fortnight has two to choose from.
const inPart = (words: readonly Token[], days: readonly Day[]): readonly Day[] => {
  const says = (part: RegExp): boolean => words.some(({ text }) => part.test(text));
  const last = says(/^(end|end of|late)$/)
    ? days.slice(-2)
    : says(/^(early|start|beginning|start of|beginning of)$/)
      ? days.slice(0, 2)
      : days;
  return days.length > 2 ? last : days;
};

export const vague = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const month =
    vagueMonth.at(tokens, index, tokens.length) ??
    movedTo.at(tokens, index, tokens.length) ??
    monthFirst.at(tokens, index, tokens.length) ??
    monthWedding.at(tokens, index, tokens.length) ??
    eventMonth.at(tokens, index, tokens.length);
  const next = tokens[month?.end ?? 0] ?? (tokens[index] as Token);
  if (month !== undefined && !isA(next, 'number') && !/^(be|the|\.|bank|long|day)$/.test(next.text)) {
    const read = several(index, month.end, context, (year) => weekdaysOfMonth(year, monthOfToken(month.kept['m']), 6));
    const [day] = read?.days ?? [];
    if (read === undefined || day === undefined) return undefined;
    const days = inPart(tokens.slice(index, month.end), read.days);
    return { ...read, days, relative: true, within: monthFrom(context, monthOf(day), yearOf(day)) };
  }
  const far = monthOfYear.at(tokens, index, tokens.length);
  const farYear = yearFrom(far?.kept['y'], tokens);
  if (far !== undefined && farYear !== undefined && far.kept['y']?.text.length === 4) {
    const within = monthFrom(context, monthOfToken(far.kept['m']), farYear);
    const days = within.filter((day) => weekdayNumber(day) === 6);
    if (days.length > 0) return { start: index, end: far.end, days, why: 'which day', relative: true, within };
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
  const after = /^(of|,|-)$/.test(tokens[day?.end ?? 0]?.text ?? '') ? tokens[(day?.end ?? 0) + 1] : tokens[day?.end ?? 0];
  if (day === undefined || number === undefined || after?.means['month'] !== undefined || after?.text === 'next') return undefined;
  // "changed her mind for the 3rd time"
  if (
    /^(time|times|attempt|go|round|try|draft|version|week|month|year|lot|batch|tray|box|coffee|cup|day)$/.test(tokens[day.end]?.text ?? '')
  )
    return undefined;
  // "wedding 2nd last saturday in may" counts saturdays.
  const counted = /^(last|birthday|anniversary)$/.test(tokens[day.end]?.text ?? '') || tokens[day.end]?.means['weekday'] !== undefined;
  if (counted && !/^(on|to|for|it's|its|is|the|by|until)$/.test(tokens[index]?.text ?? '')) return undefined;
  if (monthFollows.at(tokens, day.end, tokens.length) !== undefined) return undefined;
  if (tokens[day.end]?.text === 'of' && [1, 2].some((by) => tokens[day.end + by]?.number?.form === 'ordinal')) return undefined;
  return dayBesideWeekday(tokens, index, day.end, number, context) ?? dayAlone(index, day.end, number, context);
};

// "the 27th, a saturday", "27th (sat)": as if the weekday had come first. "the 1st saturday" counts.
const dayBesideWeekday = (
  tokens: readonly Token[],
  start: number,
  end: number,
  number: number,
  context: ReadingContext,
): DateRead | undefined => {
  const behind = weekdayBehind.at(tokens, end, tokens.length);
  if (behind?.kept['w'] === undefined || (number <= 5 && behind.kept['w'] === tokens[end])) return undefined;
  if (/^(week|fortnight|next|coming|and|or|-|,|\/)$/.test(tokens[behind.end]?.text ?? '')) return undefined;
  return agreeing(start, behind.end, number, Number(behind.kept['w'].means['weekday']), context);
};
const ordinalAlone = pattern('(the)? <d:ordinal>');
/** "27th saturday", "the 27th, a saturday" */
export const dayWithWeekday = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = ordinalAlone.at(tokens, index, tokens.length);
  const number = asDay(match?.kept['d']);
  return match === undefined || number === undefined ? undefined : dayBesideWeekday(tokens, index, match.end, number, context);
};

// "saturday 13th": the next month in which the two agree; asked where another follows soon.
const weekdayAndDay = pattern('<w:weekday> (,)? (the)? <d:ordinal>');
const agreeing = (start: number, end: number, number: number, weekday: number, context: ReadingContext): DateRead | undefined => {
  const days: Day[] = [];
  for (let ahead = 0, year = yearOf(context.today), month = monthOf(context.today); ahead < 12 && days.length < 2; ahead++) {
    const day = dayOf(year, month, number);
    if (day !== undefined && day >= context.today && weekdayNumber(day) === weekday) days.push(day);
    month = month === 12 ? 1 : month + 1;
    if (month === 1) year += 1;
  }
  const [first, second] = days;
  if (first === undefined) return undefined;
  const soon = second !== undefined && second <= addDays(first, 62);
  return { start, end, days: soon ? days : [first], relative: true, ...(soon ? { why: 'which month' as const } : {}) };
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

/** What a part of a date begins with. */
export const partOpens = [
  vagueMonth,
  movedTo,
  monthFirst,
  monthWedding,
  eventMonth,
  dayOnly,
  monthOfYear,
  ofNextMonth,
  ordinalAlone,
  weekdayAndDay,
];

/** "saturday 13th" */
export const weekdayWithDay = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const placed = weekdayAndDay.at(tokens, index, tokens.length);
  const next = tokens[placed?.end ?? 0];
  if (placed === undefined || next?.means['month'] !== undefined || next?.text === 'of') return undefined;
  return agreeing(index, placed.end, asDay(placed.kept['d']) ?? 0, Number(placed.kept['w']?.means['weekday']), context);
};
