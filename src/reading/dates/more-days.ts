// Days that lean on another one in the message: "fri 12 feb set up, sat 13 wedding", "march 20 21 weekend", "the 9th of feb, sorry march".

import { dayOf, monthOf, yearOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isNumber } from '../text/token.ts';
import { weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build, monthOfToken } from './day-parts.ts';

const otherMonth = pattern(
  '(,|-)? (sorry|no|nope|oops|i mean|i meant|rather|actually|wait|er|or rather) (,|-|no|i mean|sorry|make that)? <m:month> (<d:plain>)?',
);
const nextYear = pattern('next year');
const afterwards = pattern('(i mean|i meant|that is|sorry|obviously)');

// "the 9th of feb sorry march": the later month holds.
const mended = (reader: Reader, read: DateRead): DateRead => {
  const [day] = read.days;
  if (day === undefined || read.days.length > 1) return read;
  if (nextYear.at(reader.tokens, read.end, reader.tokens.length) !== undefined && read.yearAssumed === true) {
    const later = dayOf(yearOf(reader.context.today) + 1, monthOf(day), Number(day.slice(8)));
    const { yearAssumed: _, past: __, ...said } = read;
    return later === undefined ? read : { ...said, end: read.end + 2, days: [later] };
  }
  const match = otherMonth.at(reader.tokens, read.end, reader.tokens.length);
  if (match?.kept['m'] === undefined || match.kept['d'] !== undefined) {
    const told = afterwards.at(reader.tokens, read.end, reader.tokens.length);
    return told === undefined ? read : { ...read, end: told.end };
  }
  const date = build(reader.context, monthOfToken(match.kept['m']), Number(day.slice(8)), undefined);
  const { past: _, why: __, ...rest } = read;
  return { ...rest, end: match.end, days: date === undefined ? [] : [date], yearAssumed: true };
};

const orDay = pattern('(or|or maybe|/) (maybe|on)? (the)? <d:ordinal>');
const follows = /^(-|\/|,|and|&|\+|to|or|n)$/;
const isDay = (reader: Reader, index: number): number | undefined =>
  reader.free(index) && isNumber(reader.tokens[index], 'plain', 'ordinal') ? asDay(reader.tokens[index]) : undefined;

// "march 20 21", "20 21 march": the next day stands beside, so either may be meant.
const withNextDay = (reader: Reader, read: DateRead): DateRead => {
  const [day] = read.days;
  if (day === undefined || read.days.length > 1 || read.relative === true) return read;
  const { tokens } = reader;
  const said = Number(day.slice(8));
  const both = (other: number, start: number, end: number): DateRead => {
    const date = dayOf(yearOf(day), monthOf(day), other);
    return date === undefined
      ? read
      : { start, end, days: [day, date].sort(), why: 'which date', ...(read.yearAssumed ? { yearAssumed: true } : {}) };
  };
  const alternative = orDay.at(tokens, read.end, tokens.length);
  const other = asDay(alternative?.kept['d']);
  if (alternative !== undefined && other !== undefined && other !== said && reader.free(alternative.end - 1))
    return both(other, read.start, alternative.end);
  const ahead = follows.test(tokens[read.end]?.text ?? '') ? read.end + 1 : read.end;
  const after = tokens[ahead + 1];
  const counts =
    after !== undefined &&
    ['piece', 'each', 'month', 'material', 'pack', 'ingredient', 'role', 'other'].some((tag) => after.means[tag] !== undefined);
  if (tokens[read.start]?.means['month'] !== undefined && isDay(reader, ahead) === said + 1 && !counts)
    return both(said + 1, read.start, ahead + 1);
  const opens = tokens[read.start]?.number !== undefined && isDay(reader, read.start - 1) === said - 1;
  const priced = /^(at|@|for|x|=|:)$/.test(tokens[read.start - 2]?.text ?? '') || tokens[read.start - 2]?.means['piece'] !== undefined;
  return opens && !priced ? both(said - 1, read.start - 1, read.end) : read;
};

const weekdayAndDay = pattern('<w:weekday> (,)? (the)? (<d:plain>|<d:ordinal>)');

// "sat 13" beside "fri 12 feb": the same month, when the weekday agrees.
const sameMonth = (reader: Reader, reads: readonly DateRead[]): DateRead[] => {
  const whole = reads.find((read) => read.relative !== true && read.days.length === 1);
  const [day] = whole?.days ?? [];
  if (whole === undefined || day === undefined) return [];
  const found: DateRead[] = [];
  const { length } = reader.tokens;
  for (
    let index = weekdayAndDay.next(reader.tokens, 0, length);
    index < length;
    index = weekdayAndDay.next(reader.tokens, index + 1, length)
  ) {
    const match = weekdayAndDay.at(reader.tokens, index, length);
    const number = asDay(match?.kept['d']);
    if (
      match === undefined ||
      number === undefined ||
      reads.some((read) => read.relative !== true && read.start <= index && index < read.end)
    )
      continue;
    if (!reader.free(index) || !reader.free(match.end - 1)) continue;
    const after = reader.tokens[match.end];
    if (after?.means['piece'] !== undefined || after?.means['each'] !== undefined || after?.means['month'] !== undefined) continue;
    const date = dayOf(yearOf(day), monthOf(day), number);
    if (date === undefined || weekdayNumber(date) !== Number(match.kept['w']?.means['weekday'])) continue;
    found.push({ start: index, end: match.end, days: [date], ...(whole.yearAssumed ? { yearAssumed: true } : {}) });
    index = match.end - 1;
  }
  return found;
};

/** The reads with what leans on them. */
export const withMoreDays = (reader: Reader, reads: readonly DateRead[]): readonly DateRead[] => {
  if (reads.length === 0) return reads;
  const whole = reads.map((read) => withNextDay(reader, mended(reader, read)));
  const more = sameMonth(reader, whole);
  const kept = whole.filter((read) => !more.some((other) => other.start < read.end && read.start < other.end));
  return [...kept, ...more].sort((a, b) => a.start - b.start);
};
