// Days and months by number that no other form has: "Sat Aug 7/27", "the 5th of the 6th".

import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build, monthOfToken, withWeekday } from './day-parts.ts';

// "Sat Aug 7/27": the day and the year with a stroke between them.
const monthAndStroke = pattern('(<w:weekday>)? (,)? <m:month> <s:slashed>');
export const strokedYear = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = monthAndStroke.at(tokens, index, tokens.length);
  const [day = 0, year = 0, third] = match?.kept['s']?.number?.parts ?? [];
  if (match === undefined || third !== undefined || day < 1 || day > 31 || year < 20 || year > 99) return undefined;
  const date = build(context, monthOfToken(match.kept['m']), day, 2000 + year);
  return withWeekday({ start: index, end: match.end, days: date === undefined ? [] : [date] }, match.kept['w'], context);
};

// "the 5th of the 6th"
const ofMonthNumber = pattern('(the)? <d:ordinal> (of|day of) (the)? <e:ordinal> (month)?');
export const numberedMonth = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = ofMonthNumber.at(tokens, index, tokens.length);
  const [day, month] = [asDay(match?.kept['d']), Number(match?.kept['e']?.number?.amount)];
  if (match === undefined || day === undefined || month > 12) return undefined;
  const date = build(context, month, day, undefined);
  return { start: index, end: match.end, days: date === undefined ? [] : [date], yearAssumed: true };
};

/** What such days begin with. */
export const numberedOpens = [monthAndStroke, ofMonthNumber];
