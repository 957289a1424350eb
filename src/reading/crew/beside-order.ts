// "40 bouts at 12, 2 of us for 5 hrs": an order and who makes it, in one sentence. The hands are read in their own clauses, and the order is left to its own phrase.

import { clausesOf } from '../held/clauses.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const counted = pattern('(<count> (x)? (<material>)? <piece>|<piece> (x|:|-) <count>)');
const ofHands = ({ text, number, means }: Token): boolean =>
  means['bench'] !== undefined ||
  number?.form === 'duration' ||
  number?.form === 'time' ||
  /^(of us|us|me|myself|hr|hrs|hour|hours|an hour|each way|per|takes|taking|wage|pay|paid)$/.test(text);

/** The stretch of the part that speaks of hands, without clauses before or behind it that only count pieces. */
export const withoutOrder = (reader: Reader, part: Part): Part => {
  const { tokens } = reader;
  const clauses = clausesOf(reader, part);
  const orders = clauses.map(
    ({ start, end }) => counted.in(tokens, start, end) !== undefined && !tokens.slice(start, end).some((token) => ofHands(token)),
  );
  const [first, last] = [orders.indexOf(false), orders.lastIndexOf(false)];
  if (!orders.includes(true) || first < 0 || orders.slice(first, last).includes(true)) return part;
  const [from, to] = [clauses[first]?.start ?? part.start, clauses[last]?.end ?? part.end];
  if (!tokens.slice(from, to).some((token) => ofHands(token))) return part;
  return { ...part, start: tokens[from]?.text === ',' ? from + 1 : from, end: to };
};
