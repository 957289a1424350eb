// "bridal party of 8 plus both sets of parents": twelve of them, where the parents of two families are four.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const lead = "(so|it's|its|it is|we have|we've|there's|theres|the|a|just){0,2}";
const parents = '(,|plus|and|&|\\+|with|n|then){1,2} (both|two|2|the two|the) (sets|lots|pairs) of parents (too|as well|wearing|in all)?';
const forms = [
  pattern(`${lead} (bridal|wedding)? (party|group|crew) of <n:count> ${parents}`),
  pattern(`${lead} <n:count> (of them|of us|people)? in (the)? (bridal|wedding)? (party|group) ${parents}`),
];
const parentsOfBoth = 4;

export const setsOfParents = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, end);
  const number = match?.kept['n']?.number;
  if (match?.end !== end || !isSingle(number) || number.approx === true) return undefined;
  return found(reader, start, end, [{ fact: 'wearers', wearers: [], total: Number(number.amount) + parentsOfBoth }]);
};
