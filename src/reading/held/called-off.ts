// A day that no longer holds: "couple cancelled 14 march", "not 14 march anymore". With a new day beside it, it is a change and read elsewhere.

import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const off = pattern(
  "(cancelled|canceled|cancelling|canceling|cancels|called off|call off|pulled out|pulling out|fell through|fallen through|postponed|postponing|no longer|anymore|any more|not happening|isn't happening|isnt happening|not going ahead|backed out|bailed|dumped|scrapped)",
);
const isOff = pattern("(<month>|<slashed>|<ordinal>|wedding|party|event|job|gala|do) (is|are|'s|now)? off");
const again = pattern('(now|moved to|new date is|instead|until|till|postponed to|rescheduled|to <weekday>|to the|to <number>|to <month>)');

export const calledOff = (reader: Reader, part: Part): boolean => {
  const { tokens } = reader;
  const told = off.in(tokens, part.start, part.end) ?? isOff.in(tokens, part.start, part.end);
  if (told === undefined) return false;
  if (tokens.slice(part.start, part.end).some((token) => token.means['piece'] !== undefined || token.means['ingredient'] !== undefined))
    return false;
  let days = 0;
  for (let index = part.start; index < part.end; index++) {
    const read = dateAt(tokens, index, reader.context);
    if (read === undefined) continue;
    days += 1;
    index = read.end - 1;
  }
  return days === 1 && again.in(tokens, part.start, part.end) === undefined;
};
