// A quick look for words of hands and hours, so that most sentences need no closer one.

import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// One of these stands in every sentence about hands and hours: most messages have none and need no closer look.
const cue =
  /^(me|myself|meself|us|i|i'm|im|i'll|i've|ive|we|we're|we've|she|he|she's|he's|they're|both|sick|ill|off|away|out|in|on|one|two|rostered|roster|shift|wage|wages|pay|paid|labour|hr|hrs|hour|hours|hourly|h|ph|pace|each|between|only|just|all|nobody|no|team|crew|staff|help|helping|helps)$/;
/** Whether the sentence may be about who is at the bench and for how long. */
export const speaksOfHands = ({ tokens }: Reader, { start, end }: Part): boolean =>
  tokens
    .slice(start, end)
    .some(
      ({ text, number, means }) =>
        means['bench'] !== undefined ||
        means['role'] !== undefined ||
        number?.form === 'duration' ||
        number?.form === 'time' ||
        (number?.form === 'plain' && number.max !== undefined) ||
        cue.test(text),
    );
