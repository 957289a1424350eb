// Whether a question's number is one more or one fewer than there is, or a kind is thought away: "how much for 5 more?", "whats the
// total without the corsages?". Nothing of it is stored.

import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

export type Differs = 'more' | 'fewer' | 'without';

const more = [
  pattern('<count> (more|extra|additional|further|others)'),
  pattern('<count> (<material>)? (<piece>|of them|of those|pieces) (more|extra|on top)'),
  pattern('(another|extra|additional|add|adds|added|adding) (on|in)? (an|another|extra)? <count>'),
];
const fewer = [
  pattern('<count> (<material>)? (<piece>)? (fewer|less)'),
  pattern('<count> (fewer|less)'),
  pattern('(lose|loses|losing|lost|take off|takes off|taking off|knock off|cut|drop|drops|dropped|dropping) (the|another)? <count>'),
];
const away =
  "(without|minus|excluding|except|except for|bar|not counting|apart from|drop|drops|dropped|dropping|leave out|left out|leaving out|skip|skipped|skipping|lose|cut|ditch|scrap|cancel|cancelled|take out|take off|don't do|dont do|do not do|didn't do|didnt do|don't have|dont have|didn't have|didnt have|don't want|dont want|didn't want|didnt want|no)";
const without = [pattern(`${away} (the|any|her|his|their|our|all|those|these|of|more){0,3} (<material>)? <piece>`)];

/** How the number or the kind asked about differs from what is ordered. */
export const differsIn = ({ tokens }: Reader, start: number, end: number, number: number | undefined): Differs | undefined => {
  if (number === undefined) return firstIn(without, tokens, start, end) === undefined ? undefined : 'without';
  if (firstIn(more, tokens, start, end) !== undefined) return 'more';
  return firstIn(fewer, tokens, start, end) === undefined ? undefined : 'fewer';
};
