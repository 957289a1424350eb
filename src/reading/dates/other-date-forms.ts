// Dates written in a way none of our own forms knows ("Mar. 14", "2027/3/14"): read by chrono-node in its strict form, day or month first as the
// studio writes. Called only when a month, a weekday or a year stands in a message without any date of ours; kept only when day and month are certain.

import { Chrono, en } from 'chrono-node';
import { type Day, parseDay } from '../../values/day.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';
import { afterMay } from './date-words.ts';
import { withWeekday } from './day-parts.ts';

const dayFirst = new Chrono(en.configuration.createConfiguration(true, true));
const monthFirst = new Chrono(en.configuration.createConfiguration(true, false));

/** Longer messages are prices and lists; a date in them stands in a form of ours. */
const longest = 200;
const monthLike = /^(jan|feb|mar|apr|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,7}$/;
const yearLike = /^20\d{2}$/;

const likely = (reader: Reader): boolean =>
  reader.message.clean.text.length <= longest &&
  reader.tokens.some((token) => token.number !== undefined) &&
  reader.tokens.some(
    (token) =>
      token.means['month'] !== undefined ||
      (token.kind === 'word' && monthLike.test(token.text) && token.means['piece'] === undefined) ||
      yearLike.test(token.text),
  );

const dayOfParts = (get: (part: 'year' | 'month' | 'day') => number | null): Day | undefined => {
  const pad = (value: number | null, length: number): string => String(value ?? 0).padStart(length, '0');
  return parseDay(`${pad(get('year'), 4)}-${pad(get('month'), 2)}-${pad(get('day'), 2)}`);
};

// Numbers with a unit, counts of pieces and prices were there first.
const onlyDateTokens = (reader: Reader, start: number, end: number): boolean => {
  for (let index = start; index < end; index++) {
    const token = reader.tokens[index];
    if (token === undefined || !reader.free(index) || token.means['piece'] !== undefined || token.kind === 'line') return false;
    if (token.number !== undefined && !['plain', 'ordinal', 'slashed', 'time', 'code'].includes(token.number.form)) return false;
  }
  return !(reader.tokens[end]?.means['piece'] !== undefined || reader.tokens[end]?.means['each'] !== undefined);
};

/** Dates our own forms do not know; empty when the message holds no likely one. */
export const otherDateForms = (reader: Reader): DateRead[] => {
  if (!likely(reader)) return [];
  const { today } = reader.context;
  // biome-ignore lint/style/noRestrictedGlobals: the library wants an instant; it sees the day that was passed in and no clock
  const reference = { instant: new Date(`${today}T12:00:00Z`), timezone: 'UTC' };
  const [own, other] = reader.context.dayFirst ? [dayFirst, monthFirst] : [monthFirst, dayFirst];
  const { text } = reader.message.clean;
  const read = own.parse(text, reference, { forwardDate: true });
  // With a month in letters the order of day and month is plain in either.
  const lettered = reader.tokens.some((token) => token.means['month'] !== undefined || monthLike.test(token.text));
  const results = read.length > 0 || !lettered ? read : other.parse(text, reference, { forwardDate: true });
  return results.flatMap((result): DateRead[] => {
    const { start: from, end: to } = result;
    if (!from.isCertain('day') || !from.isCertain('month')) return [];
    const start = reader.tokens.findIndex((token) => token.start >= result.index);
    const last = result.index + result.text.length;
    const after = reader.tokens.findIndex((token) => token.start >= last);
    const end = after < 0 ? reader.tokens.length : after;
    const day = dayOfParts((part) => from.get(part));
    if (start < 0 || end <= start || day === undefined || !onlyDateTokens(reader, start, end)) return [];
    if (reader.tokens[end - 1]?.text === 'may' && afterMay.test(reader.tokens[end]?.text ?? '')) return [];
    const until = to === undefined || to === null ? undefined : dayOfParts((part) => to.get(part));
    const read: DateRead = {
      start,
      end,
      days: until === undefined || until === day ? [day] : [day, until],
      ...(until === undefined || until === day ? {} : { why: 'which date' as const }),
      ...(from.isCertain('year') ? {} : { yearAssumed: true as const }),
      ...(day < today ? { past: true as const } : {}),
    };
    return [
      withWeekday(
        read,
        reader.tokens.slice(start, end).find((token) => token.means['weekday'] !== undefined),
        reader.context,
      ),
    ];
  });
};
