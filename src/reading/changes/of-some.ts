// A number, a tax or a material that is of some alone, or of nobody here: it changes nothing of the rest, so the sentence is held.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const forms = [
  // "45 total was for the crowns only, bouts are 15 each", "that 14 should be on the corsages not the bouts"
  "<amount> (<each>|total|altogether|all in|in all|all up|tax|price|quote){0,2} (was|is|were|are|goes|went|should|should've|shouldve|should have|needs|meant|supposed|to|be|been|only|just){1,4} (for|on|against|to) (the)? <piece> (only|alone|,|not|rather than|and not|no)",
  // "plus vat on the bouts only"
  '<tax> (only)? (on|for) (the)? <piece> (only|alone|but not|not)',
  // "nan's is silk now, everyone else fresh"
  "(<owner>|<role>) (one|ones)? (is|are|'s|to be|will be|wants|having) (in)? <material> (now)? (,|-|;|and|but){1,2} (the)? (rest|others|everyone|everybody|<role>) <any>{0,3} <material>",
  '<piece> (is|are) <material> now (,|-|;|and|but){1,2} (the)? (rest|others|everyone|everybody|<role>) <any>{0,3} <material>',
  // "groom is silk now": his alone.
  '(<owner>|<role>) (one|ones)? (is|are|to be|will be|should be) (in)? <material>',
  // "they told me 15 corsages, planner says 13": who of them is right?
  '(told me|told us|said|says|list says|got) (about)? <count> <piece> (,|-|but|and){1,2} <any>{1,2} (says|reckons|said|told me|has|have|thinks) <count>',
  "(list|sheet|email|brief|quote|planner) (says|said|has) <count> <piece> (,|-|but|and){1,2} (i've|ive|i have|we've|we have|i|we|my list|mine) (got|have|says|had)? <count> (down|here|written)?",
  // "my 2pm is now 3pm"
  '(my|her|his|your) <time> (is|has|now|been|moved|to|at){1,4} <time>',
].map((source) => pattern(source));

// "nan's is silk now": hers alone.
const whose = pattern('<o:word> (one)? (is|was|should be|will be|can be|needs to be) (all|in|going)? <material>');
const owns = /^(hers|his|[a-z-]{2,}'s)$/;
const isOfOne = (tokens: readonly Token[], start: number, end: number): boolean => {
  for (let index = whose.next(tokens, start, end); index < end; index = whose.next(tokens, index + 1, end))
    if (owns.test(tokens[index]?.text ?? '') && whose.at(tokens, index, end) !== undefined) return true;
  return false;
};

export const isOfSome = ({ tokens }: Reader, { start, end }: Part): boolean =>
  anyIn(forms, tokens, start, end) || isOfOne(tokens, start, end);
