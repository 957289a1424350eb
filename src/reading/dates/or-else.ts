// Another day of the same month said behind the first: "sat 15 may or else the 22nd", "may 8, failing that the 15th". Which it is, is not said.

import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { DateRead } from './date-read.ts';
import { asDay, build } from './day-parts.ts';

const other = pattern(
  '(,|-)? (or else|or|else|otherwise|if not|failing that|or maybe|or possibly|or if not) (,)? (the|maybe the|possibly the|on the) <e:ordinal>',
);

export const orElse = (
  tokens: readonly Token[],
  read: DateRead,
  month: number,
  year: number | undefined,
  context: ReadingContext,
): DateRead => {
  const match = read.days.length === 1 ? other.at(tokens, read.end, tokens.length) : undefined;
  const second = match === undefined ? undefined : build(context, month, asDay(match.kept['e']) ?? 0, year);
  return match === undefined || second === undefined ? read : { ...read, end: match.end, days: [...read.days, second], why: 'which date' };
};
