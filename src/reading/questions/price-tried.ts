// "take a dollar off each, whats the total": a price is tried, and nothing is changed by it.

import { priceDifference } from '../changes/price-differences.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const form = pattern(
  "(if|we|i|you|and|so|ok|say|can|could|please|pls|just|what){0,4} (take|knock|drop|add|put|shave|chop|cut|stick|whack|bump|trim|knocked|took|dropped|added) <any>{1,8} (,|and|then|-|so){1,2} (whats|what's|what is|what does|what would|what will|how much|what do|where does) <any>{1,6}",
);
const sum = /^(total|come|comes|make|makes|altogether|sum|all|be|price|each|work|leave)$/;

export const priceTried = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = form.at(tokens, part.start, part.end);
  if (
    match?.end !== part.end ||
    !tokens.slice(part.end - 5, part.end).some(({ text, means }) => sum.test(text) || means['all'] !== undefined)
  )
    return undefined;
  for (let index = part.start; index < part.end; index++)
    if (priceDifference(tokens, index, part.end) !== undefined)
      return found(reader, part.start, part.end, [{ fact: 'question', asks: 'other' }]);
  return undefined;
};
