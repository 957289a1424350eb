// "10 of them fresh", "of which 2 dried": a part of the order has no material of its own yet, and all of them are not meant.

import type { Reader } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';

/** The word that tells how many or how much of them: "10", "half". */
export const shareOfThem = ({ tokens }: Reader, index: number): Token | undefined => {
  let at = index - 1;
  while (/^(are|is|to be|being|in|as|all|be|should|will)$/.test(tokens[at]?.text ?? '')) at -= 1;
  const before = tokens[at - 1]?.text;
  if (isCount(tokens[at]) && (before === 'of which' || (before === 'which' && tokens[at - 2]?.text === 'of'))) return tokens[at];
  if (tokens[at]?.text === 'of which') return tokens[at - 1];
  return /^(them|those|these|which)$/.test(tokens[at]?.text ?? '') && before === 'of' ? tokens[at - 2] : undefined;
};

/** Whether so many of them are meant. */
export const someOfThem = (reader: Reader, index: number): boolean => shareOfThem(reader, index)?.number?.form === 'plain';

/** "12 bouts, 2 dried": a number nobody has read right before it counts some, too. */
export const countsSome = ({ tokens, free, facts }: Reader, index: number): boolean =>
  isCount(tokens[index - 1]) && free(index - 1) && facts.some(({ fact }) => fact === 'pieces');
