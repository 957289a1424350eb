// Words behind a number that make it the price of one: "25 each", "9, for one", "14 only each". "270 per line" is none: the word goes with the line.

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const eachAfter = pattern(
  "(,|.)? (only|just|thats|that's|that is|its|it's)? (<k:upTo>|<k:budget>|<k:from>)? (\\( )? (<each>|for each|for one) (\\))? (<k:upTo>|<k:from>)?",
);
const ofLine = pattern('(per|<each>) (line|row|lot|kind|type)');

export const eachBehind = (tokens: readonly Token[], end: number): Match | undefined => {
  const match = eachAfter.at(tokens, end, tokens.length);
  return match === undefined || ofLine.at(tokens, match.end - 1, tokens.length) !== undefined ? undefined : match;
};
