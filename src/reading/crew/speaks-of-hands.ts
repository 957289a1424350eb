// A quick look for words of hands and hours, so that most sentences need no closer one.

import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

// One of these stands in every sentence about hands and hours: most messages have none and need no closer look.
const cue =
  /^(me|myself|meself|us|i|i'm|im|i'll|i've|ive|we|we're|we've|both|sick|ill|rostered|roster|shift|wage|wages|pay|paid|labour|solo|alone|myself|hr|hrs|hour|hours|hourly|h|ph|pace|between|nobody|team|crew|staff|help|helping|helps)$/;
// These only beside a day: "jo is off friday".
const cueOfADay = /^(she|he|she's|he's|they're|off|away|out|in|on|free|can|my|taking|having|one|two|each|only|just|all|no)$/;
const day = /^(today|tomorrow|tonight|tmrw|tmr|tomoz|week|weekend)$/;
/** Whether the sentence may be about who is at the bench and for how long. */
export const speaksOfHands = ({ tokens }: Reader, { start, end }: Part): boolean => {
  let [beside, dated] = [false, false];
  for (let index = start; index < end; index++) {
    const { text, number, means } = tokens[index] as Token;
    if (means['bench'] !== undefined || means['role'] !== undefined || number?.form === 'duration' || number?.form === 'time') return true;
    // "anywhere from 16 to 19 each" is a price.
    const hours = number?.form === 'plain' && number.max !== undefined && tokens[index + 1]?.means['each'] === undefined;
    if (hours || cue.test(text)) return true;
    beside ||= cueOfADay.test(text);
    dated ||= means['weekday'] !== undefined || means['month'] !== undefined || number?.form === 'ordinal' || day.test(text);
    if (beside && dated) return true;
  }
  return false;
};

/** Whether kinds are named; the "pieces" that our hours are for are all of them. */
export const namesKinds = (words: readonly Token[], ours: boolean): boolean =>
  words.some(({ means }) => means['piece'] !== undefined && !(ours && means['piece'] === 'unspecified'));
