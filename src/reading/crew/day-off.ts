// A day off of the one who writes: "im off mon and tues", "my day off is monday", "cant do sat sorry". It says nothing of who is at the
// bench for an event, so nobody reads its day.

import { clausesOf } from '../held/clauses.ts';
import { firstAt, type Pattern, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { dateIn } from './days-at-bench.ts';
import { apartAtSo } from './hands.ts';

const whenever =
  '(again|all|this|next|on|for|from|the|until|till|til|day|<weekday>|tomorrow|tmrw|today|week|<count>|<ordinal>|<month>){0,4}';
const forms: readonly Pattern[] = [
  pattern(
    `(sorry|ok|so|but|and|also|fyi|btw|heads up|remember|,|-){0,2} (i'm|im|i am|i'll be|ill be|i will be|i was|we're both|i) (also|still|both|prob|probably|actually)? (not in|not here|not around|not available|not working|not free|off|away|out|on leave|on annual leave|on holiday|on holidays|on hols|on jury duty|sick|off sick|out sick|unavailable|wfh) ${whenever}`,
  ),
  pattern(
    `(sorry|ok|so|but|and|,|-){0,2} (i|i'll)? (won't|wont|will not|can't|cant|cannot|can not|couldn't|couldnt|unable to|not able to) (do|make it in|make it|make|work|be in|be here|come in|come|cover|get in) (on|this|next|the|either|any of){0,2} (<weekday>|tomorrow|today|week|<ordinal>)`,
  ),
  pattern('(off sick|out sick|on annual leave)'),
  pattern('(my|a|his|her|your) (day|days|week) off'),
  pattern(
    '(taking|having|booked|booking|got|have|want|need|take) (the)? (<weekday>|tomorrow|<weekday> and <weekday>|<weekday> to <weekday>) off',
  ),
];

/** The stretch that tells of it: its clause, and those behind that tell of it too. */
export const dayOff = (reader: Reader, part: Part): Stretch | undefined => {
  const { tokens } = reader;
  let [start, end] = [-1, -1];
  for (const clause of clausesOf(reader, part).flatMap((each) => apartAtSo(reader, each))) {
    let off = false;
    for (let index = clause.start; index < clause.end && !off; index++) off = firstAt(forms, tokens, index, clause.end) !== undefined;
    if (off && start < 0) start = clause.start;
    if (off) end = clause.end;
    else if (start >= 0) break;
  }
  // "12 to go then im off home" names no day that could be taken for the event's.
  return start < 0 || dateIn(reader, { ...part, start, end }) === undefined ? undefined : { start, end };
};
