// "roses 5 short", "gyp 2 left", "5 short on ruscus": so many of the goods, and no pieces still to make.

import type { Match } from '../pattern.ts';
import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const before = pattern(
  '<ingredient> (stems|stem|heads|bunches|came|arrived|was|were|is|are|we|i|still|only|just|have|has|got|about|,|-|:){0,3}',
);
const behind = pattern('(on|of|in|with|from|for) (the|our|all the)? (<word>)? <ingredient>');

export const leftOfGoods = (tokens: readonly Token[], { start, end, kept }: Match): boolean => {
  if (kept['p'] !== undefined || tokens.slice(start, end).some(({ means }) => means['piece'] !== undefined)) return false;
  for (let at = start - 1; at >= 0 && at >= start - 4; at--) if (before.at(tokens, at, start)?.end === start) return true;
  return behind.at(tokens, end, tokens.length) !== undefined;
};
