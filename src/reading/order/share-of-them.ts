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

const between = /^(to|in|into|as|go|going|be|being|to be|are|is|over|over to|all|should|will|want|wants|wanted|made|done)$/;
/** "12 bouts, 2 dried", "10 to dried", "dried for 10": a number nobody has read beside it counts some, too. */
export const countsSome = ({ tokens, free }: Reader, index: number): boolean => {
  let at = index - 1;
  while (between.test(tokens[at]?.text ?? '')) at -= 1;
  if (isCount(tokens[at]) && free(at)) return true;
  const after = tokens[index + 3]?.text ?? '.';
  return (
    /^(for|on|x)$/.test(tokens[index + 1]?.text ?? '') &&
    isCount(tokens[index + 2]) &&
    free(index + 2) &&
    /^(of|[,.;]|please|pls)$/.test(after)
  );
};
