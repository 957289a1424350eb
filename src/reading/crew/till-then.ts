// Somebody who stays less long than those before: "me all day fri, jo till 1". A hall or a dinner is nobody: "church at 2, hotel from 5".

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { isVenue } from '../words/venue-words.ts';

const tillThen = pattern(
  '(,|and|&|n) (the|our|my)? (<b:bench>|<w:unlisted>) (only)? (till|til|until|from) (<count>|<time>|lunch|noon|midday)',
);

export const tillThenOnly = (tokens: readonly Token[], start: number, end: number): boolean => {
  for (let index = tillThen.next(tokens, start, end); index < end; index = tillThen.next(tokens, index + 1, end)) {
    const match = tillThen.at(tokens, index, end);
    const word = match?.kept['w']?.text;
    if (match !== undefined && (word === undefined || !(isVenue(word) || isOccasion(word)))) return true;
  }
  return false;
};
