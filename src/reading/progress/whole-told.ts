// Words that say the whole so far, or that this was all of it: "completed 15 today total 45", "last 5 done, that's the lot".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

/** "completed 15 today total 45": the whole so far stands beside the latest handful. */
export const wholeBeside = pattern(
  "(<w:all>|totals|makes it|that makes|makes|tally|running total|overall|now at|total now|that's|thats|brings it to|brings us to|so we're at|now) (is|now|so far|:|=|of|to|at|it|done|makes)? <n:count> (<p:piece>)? (now|so far|done|made|total|in total|altogether|all up)?",
);
export const wholeAfter = pattern('<n:count> (<p:piece>)? (done|made)? (<all>|now)');
/** The number is the whole so far, not the latest handful. */
const cumulative = pattern(
  "((that's|thats) (now|it at)? (<number>|all)|that makes|makes|(have|has|i've|we've|ive|weve) now (completed|finished|made|done|boxed)|now at|now on|were at|we're at|so far|in total|altogether|total|overall|all up|tally|running total)",
);
/** Whether a number is the whole so far; in "another five made, pop those on the tally" it is what the tally grows by. */
export const saysSoFar = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = cumulative.in(tokens, start, end);
  if (match === undefined) return false;
  const [to, the] = [tokens[match.start - 2]?.text ?? '', tokens[match.start - 1]?.text ?? ''];
  return (
    !(/^(tally|total|running total)$/.test(tokens[match.start]?.text ?? '') && /^(to|on|onto|in)$/.test(the === 'the' ? to : the)) &&
    // "5 crowns are finished, that's all the crowns": no number is summed up.
    !(tokens[match.end - 1]?.text === 'all' && /^(the|our|my|of)$/.test(match.end < end ? (tokens[match.end]?.text ?? '') : ''))
  );
};
/** "last 5 done, that's the lot" */
export const thatIsAll = pattern(
  "(that's|thats|thats us|that is) (all (of)? (the|our|my) <p:piece>|the lot|<all>|them all|all of them|everything|it|them|us|all|her|me) (done|now|then|finished|made)?",
);
// "right that's me, 18 done": only one who has made the last ones is done with all of them.
export const endsWork = /^(it|us|her|me)$/;
export const lastOnes = /^(last|final|remaining|rest)$/;
