// A quick look for words of hands and hours, so that most sentences need no closer one.

import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { paidByRate } from './crew-forms.ts';

// Any of these is enough for a closer look.
const cue =
  /^(sick|ill|rostered|roster|shift|wage|wages|pay|paid|paying|labour|hr|hrs|hour|hours|hourly|h|ph|pace|nobody|team|crew|staff|help|helping|helps)$/;
const rated = new RegExp(`^(${paidByRate})$`); // "freelance rate"
// Somebody, who is at the bench only where a day or hours stand beside: "jo is off friday", "ruth working 9 til 3".
const somebody =
  /^(me|myself|meself|us|i|i'm|im|i'll|i've|ive|we|we're|we've|both|solo|alone|she|he|she's|he's|they're|off|away|out|in|on|free|can|my|taking|having|working|works|coming|comes|one|two|each|only|just|all|no)$/;
const day = /^(today|tomorrow|tonight|tmrw|tmr|tomoz|week|weekend)$/;
const isWhen = (token: Token, next: Token | undefined): boolean => {
  const { text, number, means } = token;
  if (number?.form === 'time' || number?.form === 'ordinal' || means['weekday'] !== undefined || means['month'] !== undefined) return true;
  // "9 to 1" may be hours; "anywhere from 16 to 19 each" is a price.
  return (number?.form === 'plain' && number.max !== undefined && next?.means['each'] === undefined) || day.test(text);
};
/** Whether the sentence may be about who is at the bench and for how long. */
export const speaksOfHands = ({ tokens }: Reader, { start, end }: Part): boolean => {
  let [named, dated] = [false, false];
  for (let index = start; index < end; index++) {
    const token = tokens[index] as Token;
    const { text, number, means } = token;
    if (means['bench'] !== undefined || number?.form === 'duration' || cue.test(text)) return true;
    if ((text === 'rate' || text === 'rates') && rated.test(tokens[index - 1]?.text ?? '')) return true;
    named ||= means['role'] !== undefined || somebody.test(text);
    dated ||= isWhen(token, tokens[index + 1]);
    if (named && dated) return true;
  }
  return false;
};

/** Whether kinds are named; the "pieces" that our hours are for are all of them. */
export const namesKinds = (words: readonly Token[], ours: boolean): boolean =>
  words.some(({ means }) => means['piece'] !== undefined && !(ours && means['piece'] === 'unspecified'));
