// "2 of us mon to wed, 5 hrs a day": the days of a span, where the hours are said to be each day's.

import { addDays, daysBetween } from '../../values/day.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const dayToDay = pattern('<weekday> (to|-|til|till|thru|through|until) <weekday>');
const eachDay = pattern('((a|per|each|every|/) day|daily|p/d|pd)');

/** Whether a span of days is named at all. */
export const namesSpan = ({ tokens }: Reader, { start, end }: Part): boolean => dayToDay.in(tokens, start, end) !== undefined;

/** Each day from the first named to the last; undefined where the hours may be for all of them, or a day may be one of two. */
export const spanOf = (reader: Reader, { start, end }: Part): DateRead[] | undefined => {
  const { tokens } = reader;
  const match = dayToDay.in(tokens, start, end);
  if (match === undefined || eachDay.in(tokens, start, end) === undefined) return undefined;
  const [first, last] = [dateAt(tokens, match.start, reader.context), dateAt(tokens, match.end - 1, reader.context)];
  const [from, ...others] = first?.days ?? [];
  const [to] = last?.days ?? [];
  if (first === undefined || from === undefined || to === undefined || others.length > 0) return undefined;
  const days = (((daysBetween(from, to) % 7) + 7) % 7) + 1;
  return Array.from({ length: days }, (_, at) => ({ ...first, end: match.end, days: [addDays(from, at)] }));
};
