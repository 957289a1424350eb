// Goods that are not to be had, said beside those that are: "no eucalyptus this week, rose 18 a bunch". No price is theirs.

import { beginsIn, firstAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const forms = [
  "((the|our)? (<word>)? (van|lorry|truck|stall|market|auction|wholesaler|supplier|grower|farm|shop|man|they|he|she) (had|has|have|got|still|today){1,2})? (sorry|still|and|but|they've|theyve|they|there's|theres|we're|were|got){0,2} (no|without|out of|sold out of|ran out of|run out of|can't get|cant get|couldn't get|couldnt get|never mind|forget|skip) (any|the|more|good|decent)? (<word>)? <ingredient>",
  "(the)? (<word>)? <ingredient> (is|are|was|were|all|still|'s){0,2} (not in|not there|not available|unavailable|sold out|out of stock|out of season|finished|not coming|not around|missing|all gone|none left|nowhere)",
].map((source) => pattern(source));

/** The part without such a clause at its beginning or its end, where no number stands in it. */
export const withoutAbsent = ({ tokens }: Reader, part: Part): Part => {
  if (!beginsIn(forms, tokens, part.start, part.end)) return part;
  let { start, end } = part;
  const isAbsent = (from: number, to: number): boolean =>
    firstAt(forms, tokens, from, to) !== undefined && tokens.slice(from, to).every(({ number }) => number === undefined);
  for (let index = start + 1; index < end - 1; index++)
    if (/^(,|but|-|;|\.)$/.test(tokens[index]?.text ?? '') && isAbsent(start, index)) {
      start = index + 1;
      break;
    }
  for (let index = end - 2; index > start; index--)
    if (/^(,|but|-|;|\.)$/.test(tokens[index]?.text ?? '') && isAbsent(index + 1, end)) {
      end = index;
      break;
    }
  return { ...part, start, end };
};
