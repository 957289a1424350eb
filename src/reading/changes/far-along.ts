// How far the work is, in words that a correction has too.

import { firstAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// "we're at 27 now" tells how far the work is, and takes nothing back.
const farAlong = pattern(
  "(so|ok|and)? (we're|were|we are|i'm|im|i am) (now)? (on|at|up to|<upTo>) <n:plain> (<piece>)? (now|so far|done|made)? ((out of|of) (the|our|a total of)? <m:plain>)?",
);
const soFar = pattern("(so|ok|and)? (that's|thats|that makes|that is|makes) <n:plain> (<piece>)? (<all>)? (now|so far|done|made)");

export const tellsHowFar = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = firstAt([farAlong, soFar], tokens, start, end);
  if (match === undefined) return false;
  const next = tokens[match.end]?.text ?? '';
  return match.end === end || match.kept['m'] !== undefined || /^(counting|including|incl|inc|with)$/.test(next);
};
