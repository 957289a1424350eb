// A loss and what it leaves, told with what it was: "one fell apart so thats 19 done not 20". The second number puts the count right; taking the
// loss off as well would take it twice.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { doneWord } from './done-words.ts';
import { goneWrong, lossVerb, moreGoneWrong } from './losses.ts';
import { amountOf } from './made-facts.ts';

const be = '(has|have|just|is|are|was|were|got|of them|of the <piece>|went){0,3}';
const lost = `(oops|whoops|argh|ugh|damn|sorry|oh|,|ok){0,3} (the|another)? (<l:count>|one|a) (of (the|our|my|them|those))? (<material>)? (<k:piece>)? ${be} (${goneWrong}|${moreGoneWrong})`;
const why = '(on me|overnight|in the (heat|van|fridge|cold)|this morning|earlier|today|again|sadly)?';
const so =
  "(,|-|;|so|and|now|which){1,3} (that's|thats|that is|it's|its|it is|we're|were|i'm|im|makes it|leaves|leaves us|that leaves|means|only|on|at|with|just|now|down to){0,4}";
const some = '<n:count> (of them)? (<material>)? (<p:piece>)?';
const done = `(are|is|all|now){0,2} (${doneWord})?`;
const form = pattern(
  `${lost} ${why} ${so} ${some} ${done} (,|-)? (not|and not|instead of|rather than|no longer) (the)? <m:count> (<piece>)? (${doneWord})? (now|anymore|any more|sorry|after all){0,2}`,
);
// "lost 2, down to 6 left": six that are good, or six to make.
const downLeft = pattern(
  `(${lossVerb}) (another|the|about)? <count> (of them)? (<material>)? (<piece>)? (,|-|so|and|now|which){0,3} (we're|were|we are|i'm|im|that's|leaves|puts|brings){0,2} (us|me|it)? (now)? (down|back) to (only|just)? <count> (<piece>)? (left|remaining)`,
);
const finished = pattern(`(${doneWord})`);

const lossIn = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens } = reader;
  if (downLeft.in(tokens, start, end) !== undefined) return { start, end, held: true };
  const match = form.at(tokens, start, end);
  if (match?.end !== end || finished.in(tokens, start, end) === undefined) return undefined;
  const { l, n, m, k, p } = match.kept;
  const unsure = [l, n, m].some((token) => isRangeOrChoice(token?.number));
  const [lostOnes, left, before] = [l === undefined ? 1 : amountOf(l), amountOf(n), amountOf(m)];
  // "two broke so 19 done, not 20" does not add up.
  if (unsure || before - left !== lostOnes) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'change', what: 'made', to: left, from: before, ...kindOf(p ?? k) }]);
};

export const lossThenCount = (reader: Reader): Finding[] =>
  form.might(reader.tokens) || downLeft.might(reader.tokens)
    ? reader.untouched().flatMap((part) => (part.asked ? [] : (lossIn(reader, part) ?? [])))
    : [];
