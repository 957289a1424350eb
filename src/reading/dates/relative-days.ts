// Days said from today: "tomorrow", "friday", "Saturday fortnight", "a week on friday", "in three weeks".

import { addDays, type Day } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';

const relativeWeekday = pattern('(this|next|coming|this coming|the)? <w:weekday> (week|fortnight|next week|coming|next)?');
const weeksOn = pattern('(a week|week|a fortnight|fortnight|<n:duration>) (on|from|this|after|next) (this|next|coming)? <w:weekday>');
const inWeeks = pattern(
  '(in (a|about|exactly)? (<n:duration>|fortnight|week) (time|today|from today|from now)?|(<n:duration>|a fortnight|a week|fortnight|week) (today|from today|from now|time))',
);

// "tomorrow fortnight", "a week tomorrow", "three weeks saturday"
const tomorrowOn = pattern('(tomorrow|today|tmrw|tomoz) (<n:duration>|week|fortnight)');
const weeksTomorrow = pattern('(<n:duration>|a week|week|a fortnight|fortnight) (from)? (tomorrow|tmrw|tomoz)');
const weeksWeekday = pattern('<n:duration> (this|next)? <w:weekday>');

const tomorrowWord = /^(tomorrow|tmrw|tomoz|tmr|tomorow|tommorow|tomorro|2moro|2morrow|tmrow|tommorrow|tomo|tom)$/;

const weekShift = (token: Token | undefined, word: string): number => {
  if (token?.number?.form === 'duration')
    return Number(token.number.amount) * (token.number.unit === 'week' ? 7 : token.number.unit === 'day' ? 1 : Number.NaN);
  return word.includes('fortnight') ? 14 : 7;
};

/** A day said from today: "tomorrow", "Saturday fortnight", "in three weeks", "friday". */
export const relativeForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const one = (day: Day, end: number): DateRead => ({ start: index, end, days: [day], relative: true });
  const text = tokens[index]?.text ?? '';
  const { today } = context;
  const after = weeksOn.at(tokens, index, tokens.length);
  if (after?.kept['w'] !== undefined) {
    const days = weekShift(after.kept['n'], text + (tokens[index + 1]?.text ?? ''));
    if (Number.isInteger(days)) return one(addDays(comingWeekday(today, Number(after.kept['w'].means['weekday'])), days), after.end);
  }
  const tomorrow = tomorrowOn.at(tokens, index, tokens.length) ?? weeksTomorrow.at(tokens, index, tokens.length);
  if (tomorrow !== undefined) {
    const words = tokens.slice(index, tomorrow.end).map((token) => token.text);
    const days = weekShift(tomorrow.kept['n'], words.join(' '));
    const whole = tomorrow.kept['n'] === undefined || tomorrow.kept['n']?.number?.unit === 'week';
    if (whole && Number.isInteger(days)) return one(addDays(today, days + (words.includes('today') ? 0 : 1)), tomorrow.end);
  }
  const weeks = weeksWeekday.at(tokens, index, tokens.length);
  if (weeks?.kept['w'] !== undefined && weeks.kept['n']?.number?.unit === 'week' && weeks.kept['n'].number.max === undefined) {
    const days = weekShift(weeks.kept['n'], '');
    if (Number.isInteger(days)) return one(addDays(comingWeekday(today, Number(weeks.kept['w'].means['weekday'])), days), weeks.end);
  }
  const ahead = inWeeks.at(tokens, index, tokens.length);
  if (ahead !== undefined) {
    const words = tokens
      .slice(index, ahead.end)
      .map((token) => token.text)
      .join(' ');
    const days = weekShift(ahead.kept['n'], words);
    if (Number.isInteger(days) && days > 0 && !/^(a week|fortnight) time$/.test(words)) return one(addDays(today, days), ahead.end);
  }
  if (/^(today|tonight|tonite|2day)$/.test(text)) return one(today, index + 1);
  if (tomorrowWord.test(text) && !(text === 'tom' && tokens[index + 1]?.kind === 'word')) return one(addDays(today, 1), index + 1);
  if (text === 'day' && tokens[index + 1]?.text === 'after' && tomorrowWord.test(tokens[index + 2]?.text ?? ''))
    return one(addDays(today, 2), index + 3);
  const weekday = relativeWeekday.at(tokens, index, tokens.length);
  if (weekday === undefined) return undefined;
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

const weekdayForm = (tokens: readonly Token[], index: number, end: number, weekday: number, context: ReadingContext): DateRead => {
  const { today } = context;
  const words = tokens
    .slice(index, end)
    .map((token) => token.text)
    .join(' ');
  const coming = comingWeekday(today, weekday);
  const base = { start: index, end, relative: true as const };
  if (/ fortnight$/.test(words)) return { ...base, days: [addDays(coming, 14)] };
  if (/ week$/.test(words) && !/next week$/.test(words)) return { ...base, days: [addDays(coming, 7)] };
  const monday = addDays(today, 1 - weekdayNumber(today));
  if (/next week$/.test(words)) return { ...base, days: [addDays(monday, 7 + weekday - 1)] };
  // "next saturday" is the coming one for some and the one after for others, while the coming one is still this week.
  if (/^next /.test(words))
    return coming >= addDays(monday, 7) ? { ...base, days: [coming] } : { ...base, days: [coming, addDays(coming, 7)], why: 'which day' };
  if (weekdayNumber(today) === weekday && !/^(this coming|coming)/.test(words)) return { ...base, days: [today, coming], why: 'which day' };
  return { ...base, days: [coming] };
};
