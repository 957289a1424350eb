// "what would 25 corsages cost": all of them, when no word says each.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const several = pattern('<n:count> (of)? (the|those|these)? (<material>)? <piece>');
export const ofSeveral = (reader: Reader, start: number, end: number): boolean => {
  const counted = several.in(reader.tokens, start, end)?.kept['n']?.number;
  if (counted === undefined || Number(counted.amount) < 2) return false;
  return !reader.tokens
    .slice(start, end)
    .some(
      ({ means, text }, at) =>
        (means['each'] !== undefined && reader.tokens[start + at - 1]?.number === undefined) ||
        /^(per|price|rate|charge|charging|charged|quote|quoted)$/.test(text),
    );
};
