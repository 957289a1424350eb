// Two days with an order each: "13 march 20 bouts, 20 march 15 bouts".

import type { Finding, Reader } from '../phrase.ts';
import { isCount } from '../text/token.ts';
import type { DateRead } from './date-read.ts';

const hasPiece = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token, at) => token.means['piece'] !== undefined && reader.free(start + at));

// "10 bouts at 12 for sat and 5 for sun": the second day's number stands without its piece.
const countBefore = (reader: Reader, first: DateRead, second: DateRead): boolean => {
  const last = second.start - 1;
  const at = /^(for|on|the)$/.test(reader.tokens[last]?.text ?? '') ? last - 1 : last;
  return at >= first.end && isCount(reader.tokens[at]) && reader.free(at) && !/^(at|@|-|to|x)$/.test(reader.tokens[at - 1]?.text ?? '');
};

// "13 march 20 bouts, 20 march 15 bouts": two events' orders, so neither is this one's until the day is known.
export const takenByBoth = (reader: Reader, first: DateRead, second: DateRead): Pick<Finding, 'takes' | 'held'> => {
  const between = hasPiece(reader, first.end, second.start) || countBefore(reader, first, second);
  const two = [hasPiece(reader, 0, first.start), between, hasPiece(reader, second.end, reader.tokens.length)].filter(Boolean).length > 1;
  const own = (index: number): boolean => (first.start <= index && index < first.end) || (second.start <= index && index < second.end);
  const takes = reader.tokens.flatMap((_, index) => (reader.free(index) && (two || own(index)) ? [index] : []));
  return two ? { takes, held: true } : { takes };
};
