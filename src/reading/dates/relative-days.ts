// Days said from today: "tomorrow", "friday", "Saturday fortnight", "a week on friday", "in three weeks", "after ten days".

import { addDays, type Day } from '../../values/day.ts';
import { type Pattern, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import { type Token, textOf } from '../text/token.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { daysAhead, daysNear, type Span, spanAt, spanOpens } from './spans.ts';
import { isTomHimself } from './tom-himself.ts';

const tomorrowWord = '(tomorrow|tmrw|tomoz|tmr|tomorow|tommorow|tomorro|2moro|2morrow|tmrow|tommorrow|tomo|2mrw|tomoro|tom)';
const todayWord = '(today|2day|now)';

const onWeekday = pattern('(on|from|this|after|next|coming|the|by){0,2} <w:weekday>');
const onTomorrow = pattern(`(from|after|on)? ${tomorrowWord}`);
const onToday = pattern(`(from ${todayWord}|after (today|2day)|today|2day)`); // "45 days now" have gone by
const inTime = pattern('(time|from today|from now|today|hence|away from now|from the date)');
const away = pattern('(away|out|to go|ahead)');
const behindWeekday = pattern('<w:weekday> in (a)?');
const behindTomorrow = pattern(`(${tomorrowWord}|today|this day)`);
const dayAfter = pattern(`(the)? (day after ${tomorrowWord}|overmorrow)`);
const someWeekdays = pattern('(in)? (the)? <n:count> <w:weekday> (from (now|today)|away|out|time|hence)?');

type Shift = (day: Day) => Day;
const ahead =
  (span: Span): Shift =>
  (day) =>
    daysAhead(day, span);

/** The forms that begin with a stretch of time: "two weeks on saturday", "a fortnight tomorrow", "ten days away". */
const fromSpan = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const opens = /^(in|after|within)$/.test(tokens[index]?.text ?? '');
  const span = spanAt(tokens, opens ? index + 1 : index);
  // "half a day on friday" is how long, and friday the day.
  if (span === undefined || [index - 1, index - 2].some((at) => /^(half|full|whole)$/.test(tokens[at]?.text ?? ''))) return undefined;
  const { today } = context;
  const one = (day: Day, end: number): DateRead => ({ start: index, end, days: [day], relative: true });
  const some = (days: readonly Day[], end: number): DateRead => ({ start: index, end, days, why: 'which day', relative: true });
  const dated = (day: Day, end: number): DateRead => (span.rough ? some(daysNear(today, span), end) : one(day, end));
  const shift = ahead(span);
  const behind = (form: Pattern) => form.at(tokens, span.end, tokens.length);
  const weekday = opens ? undefined : behind(onWeekday);
  if (weekday !== undefined && saysSpan(tokens, index, span, weekday.start + 1 === weekday.end)) {
    const coming = comingWeekday(today, Number(weekday.kept['w']?.means['weekday']));
    if (span.rough) return undefined;
    return span.unit === 'month' ? some([addDays(coming, span.amount * 28), shift(coming)], weekday.end) : one(shift(coming), weekday.end);
  }
  const tomorrow = opens ? undefined : behind(onTomorrow);
  if (tomorrow !== undefined && span.unit !== 'day') return dated(addDays(shift(today), 1), tomorrow.end);
  const told = behind(inTime) ?? (opens ? undefined : behind(onToday));
  if (told !== undefined && !/^(on|that|it|its|it's)$/.test(tokens[told.end]?.text ?? '')) return dated(shift(today), told.end);
  const gone = countsDown(tokens, index, span.end, context) ? undefined : behind(away);
  // "three weeks away" is said of the week more than of the day.
  if (gone !== undefined && !opens && span.amount * (span.unit === 'day' ? 1 : 7) > 1)
    return span.unit === 'day' || tokens[index]?.text === 'exactly' ? dated(shift(today), gone.end) : some(daysNear(today, span), gone.end);
  if (!opens) return undefined;
  const next = tokens[span.end];
  if (
    next?.means['weekday'] !== undefined ||
    next?.means['month'] !== undefined ||
    /^(of|off|on|before|after|we|they|it)$/.test(next?.text ?? '')
  )
    return undefined;
  if (tokens[index]?.text === 'within') return undefined;
  return span.unit === 'month' ? some(daysNear(today, span), span.end) : dated(shift(today), span.end);
};

// "only 2 weeks to go!" tells nobody when it is: the day is known, or the weeks are counted roughly.
const toGo = pattern('to go');
const eventWord = pattern("(wedding|event|party|ceremony|date|it's|its|they're|big day|do|day)");
const countsDown = (tokens: readonly Token[], index: number, end: number, { eventDate }: ReadingContext): boolean =>
  toGo.at(tokens, end, tokens.length) !== undefined &&
  (eventDate !== undefined ||
    [index, index - 1].some((at) => /^(only|just|still)$/.test(tokens[at]?.text ?? '')) ||
    eventWord.in(tokens, 0, tokens.length) === undefined);

// "week saturday" is said so; "a busy week, saturday" and "this week saturday" are not.
const saysSpan = (tokens: readonly Token[], index: number, span: Span, bare: boolean): boolean => {
  if (!bare) return true;
  if (span.unit === 'day') return false;
  const before = tokens[index - 1]?.text ?? ',';
  return /^(a|an|one|\d+)$/.test(tokens[index]?.text ?? '') || tokens[index]?.number !== undefined
    ? !/^(per|each|every)$/.test(before)
    : /^(,|-|:|is|on|for|it's|its|'s|date|event|wedding|by|be|do|party|says|said)$/.test(before) || tokens[index - 1]?.kind === 'line';
};

// "tomorrow week", "friday in a fortnight", "two saturdays from now"
const beforeSpan = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const { today } = context;
  const base = behindTomorrow.at(tokens, index, tokens.length);
  const span = base === undefined ? undefined : spanAt(tokens, base.end);
  if (base !== undefined && span !== undefined && !span.rough && span.unit === 'week') {
    const from = /^(today|this)$/.test(tokens[index]?.text ?? '') ? today : addDays(today, 1);
    return { start: index, end: span.end, days: [daysAhead(from, span)], relative: true };
  }
  const weekday = behindWeekday.at(tokens, index, tokens.length);
  const later = weekday === undefined ? undefined : spanAt(tokens, weekday.end);
  if (weekday !== undefined && later !== undefined) {
    const coming = comingWeekday(today, Number(weekday.kept['w']?.means['weekday']));
    const day = daysAhead(coming, later);
    const end = inTime.at(tokens, later.end, tokens.length)?.end ?? later.end;
    return { start: index, end, days: [addDays(day, -7), day], why: 'which day', relative: true };
  }
  const several = someWeekdays.at(tokens, index, tokens.length);
  const count = Number(several?.kept['n']?.number?.amount);
  const opened = tokens[index]?.text === 'in';
  if (several === undefined || count > 30 || (!opened && several.kept['w'] === tokens[several.end - 1])) return undefined;
  if (!/s$/.test(several.kept['w']?.text ?? '')) return undefined;
  const coming = comingWeekday(today, Number(several.kept['w']?.means['weekday']));
  return {
    start: index,
    end: several.end,
    days: [addDays(coming, 7 * count - 7), addDays(coming, 7 * count)],
    why: 'which day',
    relative: true,
  };
};

const weekOfDay = pattern('(next|this|week after next|the week after next) (week)? (-|,|on|the|on the){0,2} <w:weekday>');
const dayOfWeek = pattern(
  '(the|this|next|coming)? <w:weekday> (in|of|the|of the)? (next week|this week|week after next|week after|after next)',
);
// "next week saturday", "the saturday of next week", "saturday after next"
const namedWeek = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = dayOfWeek.at(tokens, index, tokens.length) ?? weekOfDay.at(tokens, index, tokens.length);
  if (match === undefined) return undefined;
  const words = textOf(tokens, index, match.end);
  const weekday = Number(match.kept['w']?.means['weekday']);
  const monday = addDays(context.today, 1 - weekdayNumber(context.today));
  const base = { start: index, end: match.end, relative: true as const };
  if (/next week|this week|week after next/.test(words)) {
    const weeks = words.includes('week after next') ? 2 : words.includes('next week') ? 1 : 0;
    const day = addDays(monday, 7 * weeks + weekday - 1);
    return day < context.today ? undefined : { ...base, days: [day] };
  }
  if (!/after/.test(words)) return undefined;
  const coming = comingWeekday(context.today, weekday);
  return { ...base, days: [addDays(coming, 7), addDays(coming, 14)], why: 'which day' };
};

const relativeWeekday = pattern('(this|next|coming|this coming|the following|following|the)? <w:weekday> (week|fortnight|coming|next)?');
// "5 hrs each sat" is each person's five hours.
const oftenSaid = (tokens: readonly Token[], index: number): boolean =>
  gone.test(tokens[index - 1]?.text ?? '') && !(tokens[index - 1]?.text === 'each' && tokens[index - 2]?.number?.form === 'duration');
const gone = /^(last|previous|past|every|each|all|most|any|alternate|yesterday)$/;

/** A day said from today: "tomorrow", "Saturday fortnight", "in three weeks", "friday". */
export const relativeForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const one = (day: Day, end: number): DateRead => ({ start: index, end, days: [day], relative: true });
  const text = tokens[index]?.text ?? '';
  const { today } = context;
  const spanned = fromSpan(tokens, index, context) ?? beforeSpan(tokens, index, context) ?? namedWeek(tokens, index, context);
  if (spanned !== undefined) return spanned;
  if (itself.at(tokens, index, tokens.length) !== undefined) return one(today, index + 1);
  const part = partOfToday.at(tokens, index, tokens.length);
  if (part !== undefined) return one(today, part.end);
  const after = dayAfter.at(tokens, index, tokens.length);
  if (after !== undefined) return one(addDays(today, 2), after.end);
  const tomorrow = tomorrowForm.at(tokens, index, tokens.length);
  if (tomorrow !== undefined && !(text === 'tom' && isTomHimself(tokens, index))) return one(addDays(today, 1), index + 1);
  const weekday = relativeWeekday.at(tokens, index, tokens.length);
  if (weekday === undefined || oftenSaid(tokens, index)) return undefined;
  // "the saturday before the fair", "on saturdays"
  if (/^(before|after)$/.test(tokens[weekday.end]?.text ?? '') && !/^(,|\d.*)$/.test(tokens[weekday.end + 1]?.text ?? ','))
    return undefined;
  if (tokens[index - 1]?.text === 'on' && /days$/.test(tokens[weekday.end - 1]?.text ?? '')) return undefined;
  // "the one the kid sat on"
  if (
    text === 'sat' &&
    tokens[index + 1]?.text === 'on' &&
    tokens[index + 2]?.number === undefined &&
    !/^(,|for|on|this|next|event|wedding)$/.test(tokens[index - 1]?.text ?? ',')
  )
    return undefined;
  return weekdayForm(tokens, index, weekday.end, Number(weekday.kept['w']?.means['weekday']), context);
};
const itself = pattern('(today|tonight|tonite|2day)');
const partOfToday = pattern('this (arvo|afternoon|evening|morning)');
const tomorrowForm = pattern(tomorrowWord);

/** What a day said from today begins with. */
export const relativeOpens = [
  ...spanOpens,
  behindTomorrow,
  behindWeekday,
  someWeekdays,
  dayOfWeek,
  weekOfDay,
  itself,
  partOfToday,
  dayAfter,
  tomorrowForm,
  relativeWeekday,
];

const weekdayForm = (tokens: readonly Token[], index: number, end: number, weekday: number, context: ReadingContext): DateRead => {
  const { today } = context;
  const words = textOf(tokens, index, end);
  const coming = comingWeekday(today, weekday);
  const base = { start: index, end, relative: true as const };
  const either = (day: Day): DateRead => ({ ...base, days: [day, addDays(day, 7)], why: 'which day' });
  const onDay = weekdayNumber(today) === weekday && !/^(this coming|coming)/.test(words);
  const weeks = / fortnight$/.test(words) ? 2 : / week$/.test(words) ? 1 : 0;
  // "wednesday week" on a Wednesday counts from today for some, and "next friday week" from either friday.
  if (weeks > 0) {
    if (onDay) return either(addDays(today, 7 * weeks));
    return /^next /.test(words) ? either(addDays(coming, 7 * weeks)) : { ...base, days: [addDays(coming, 7 * weeks)] };
  }
  const monday = addDays(today, 1 - weekdayNumber(today));
  // "now the following saturday": the one behind the event, where its day is known.
  if (/following/.test(words))
    return context.eventDate === undefined
      ? either(coming)
      : { ...base, days: [...new Set([coming, comingWeekday(context.eventDate, weekday)])].sort(), why: 'which day' };
  // "next saturday" is the coming one for some and the one after for others, while the coming one is still this week.
  if (/^next /.test(words)) return coming >= addDays(monday, 7) ? { ...base, days: [coming] } : either(coming);
  return onDay ? either(today) : { ...base, days: [coming] };
};
