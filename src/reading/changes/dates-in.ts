// The days a stretch of a correction names, with numbers that are a day only there: "wed 10 mar, sorry thurs 11", "from 6 to 13 march".

import type { Day } from '../../values/day.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { dayAlone } from '../dates/part-dates.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, isNumber, type Token } from '../text/token.ts';

// "wed 10 mar, sorry thurs 11": a weekday with its number, in the month said before.
const weekdayNumbered = pattern('<weekday> (the)? <d:plain>');
const numbered = (reader: Reader, index: number): DateRead | undefined => {
  const match = weekdayNumbered.at(reader.tokens, index, reader.tokens.length);
  const day = Number(match?.kept['d']?.number?.amount);
  const next = reader.tokens[match?.end ?? 0];
  if (match === undefined || !Number.isInteger(day) || day < 1 || day > 31 || next?.kind === 'word' || next?.number !== undefined)
    return undefined;
  return dayAlone(index, match.end, day, reader.context);
};

export const datesIn = (reader: Reader, part: { readonly start: number; readonly end: number }, old = false): DateRead[] => {
  const reads: DateRead[] = [];
  for (let index = part.start; index < part.end; index++) {
    const whole = numbered(reader, index) ?? dateAt(reader.tokens, index, reader.context);
    // "from 6 to 13 march": the first number alone, though the two would make a span.
    const read = whole === undefined || (old && whole.end > part.end) ? loneDay(reader, index, old) : whole;
    if (read === undefined || read.end > part.end) continue;
    reads.push(read);
    index = read.end - 1;
  }
  return reads;
};

// "the 21st not the 14th": with no month said, the thread's own month if it has one.
// "21 feb, not 20": what is taken back may be a number alone.
const loneDay = (reader: Reader, index: number, old: boolean): DateRead | undefined => {
  const token = reader.tokens[index];
  const day = Number(token?.number?.amount);
  return isNumber(token, 'ordinal') || (old && isCount(token) && day >= 1 && day <= 31)
    ? dayAlone(index, index + 1, Number(token?.number?.amount), reader.context)
    : undefined;
};

/** "moved from 28 to 7 march": in which month the old day was is not said; "from 2 to 3pm on 13 march" tells hours. */
export const monthOpen = (tokens: readonly Token[], old: DateRead, named: Day): boolean =>
  tokens[old.end]?.text === 'to' && ((old.dayOnly ?? 0) > Number(named.slice(8)) || tokens[old.end + 1]?.number?.form === 'time');

/** Whether a day stands in the stretch. */
export const dayIn = (reader: Reader, { start, end }: { readonly start: number; readonly end: number }): boolean => {
  for (let index = start; index < end; index++) if (dateAt(reader.tokens, index, reader.context) !== undefined) return true;
  return false;
};
