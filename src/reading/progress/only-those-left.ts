// What is left, its kind told first and how many behind: "only the combs to do and theres 6". None is ordered.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { amountOf } from './made-facts.ts';

const form = pattern(
  "(ok|so|and|now|we've|ive|i've|we|i|have|got|it's|its|,){0,3} (only|just) (got)? (the|my|our)? (<material>)? <p:piece> (to do|to go|left|left to do|to make|to finish|still to do|left to make|left to go|outstanding|remaining) (now|today|tomorrow)? (,|-|and){0,2} ((there's|theres|there is|there are|that's|thats|its|it's|all)? (only|just)?) <n:count> (of them|of those|of em)? (left|to go|to do|now)?",
);

// "the pin corsages to go now, four of them"
const rest = pattern(
  '(ok|so|and|now|still|,){0,2} (the|my|our)? (<material>)? <p:piece> (still)? (to do|left|left to do|to make|to finish|still to do|left to make|left to go|outstanding|remaining|to go now) (now|today)? (,|-|:|and){0,2} (just|only)? <n:count> of (them|those|em)',
);

export const onlyThoseLeft = (reader: Reader): Finding[] =>
  form.might(reader.tokens) || rest.might(reader.tokens)
    ? reader.untouched().flatMap((part) => {
        const match = part.asked ? undefined : firstAt([form, rest], reader.tokens, part.start, part.end);
        const { n, p } = match?.kept ?? {};
        if (match?.end !== part.end || isRangeOrChoice(n?.number)) return [];
        return [found(reader, part.start, part.end, [{ fact: 'left', count: amountOf(n), ...kindOf(p) }])];
      })
    : [];
