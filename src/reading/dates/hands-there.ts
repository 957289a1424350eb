// "team be at the barn 6am sat 13 feb for the wedding": the hour is when our own hands have to be there, and not the event's.

import { beginsAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';
import { isCompound, namesEvent } from './leads.ts';

const hands =
  "(team|crew|staff|everyone|everybody|all hands|all|girls|lads|ladies|boys|guys|<bench>|us|we|we're|we'll|i|i'm|im|i'll|me|you|u|(me|<unlisted>) (and|&|n|\\+) (me|i|<word>))";
const go =
  '(be|meet|meets|meeting|arrive|arrives|arriving|leave|leaves|leaving|get|gets|getting|start|starting|report|turn up|show up|gather|there|on site|onsite|call time|call is|calltime|to|needs|need|must|should|will|have|has|gotta|please|pls|all|both|are|is|can|up)';
const place = '((be|there)? (at|in|on|to|from|outside) (the|our|my|site|his|her)? (<word>){0,2}|there|here|in|on site|onsite|down|up)';
const before = [
  `${hands} ${go}{1,5} ${place}? (by|at|for|from|around|about|@|,|on){0,2}`,
  `(me|us|team|crew|staff|all hands|everyone|girls|i'm|im|we're|(me|<unlisted>) (and|&|n|\\+) (me|i|<word>)) ${place} (by|at|for|from|around|about|@|,|on){0,2}`,
  `(pls|please|,|-)? (be|get|meet) (there|here|at the <word> (<word>)?|on site|onsite|in) (by|at|for|from|around|about|@|,|on){0,2}`,
  '(call time|calltime|call|crew call|staff call|team call) (is|at|:|,)?',
].map((source) => pattern(source));
const opening = /^(,|\.|;|-|all|and|then|pls|please)$/;
const reach = 12;

const endsAt = ({ tokens }: Reader, end: number): boolean => {
  for (let from = end - 1; from >= 0 && from >= end - reach; from--) {
    if (!beginsAt(before, tokens, from)) continue;
    for (const [at, form] of before.entries()) {
      // "guests be at the barn 2pm" are not ours: where nobody is named, it opens the clause.
      const opens = at !== 2 || from === 0 || opening.test(tokens[from - 1]?.text ?? '') || tokens[from - 1]?.kind === 'line';
      if (opens && form.at(tokens, from, end)?.end === end) return true;
    }
  }
  return false;
};

/** "all hands at the studio 6am fri 12 feb": the day, too, is one of work. */
export const isHandsDay = (reader: Reader, read: DateRead): boolean =>
  [0, 1, 2].some((by) => endsAt(reader, read.start - by)) && !namesEvent(reader.tokens) && !isCompound(reader.tokens);

/** Whether the hour at `index` is one at which our own hands are somewhere. */
export const isHandsHour = (reader: Reader, index: number, reads: readonly DateRead[]): boolean => {
  if (endsAt(reader, index)) return true;
  // "team at the barn sat 13 feb 6am"
  const day = reads.find(
    (read) => read.end === index || (read.end === index - 1 && /^(,|at|by)$/.test(reader.tokens[read.end]?.text ?? '')),
  );
  return day !== undefined && endsAt(reader, day.start);
};
