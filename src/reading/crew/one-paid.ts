// One who is paid by the hour: "paying aroha $28 an hr for 6 hrs", "£12.60 an hour for the new girl, 9 til 1". Beside a wage and hours that
// is one pair of hands.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isUnlisted } from '../words/other-things.ts';
import { oneHand } from './crew-forms.ts';
import { notSomeone } from './hours-apart.ts';

const single =
  '(the|my|our|a|one|her|his) (extra|new|young|other|good|usual|part time|saturday)? (<b:bench>|girl|lad|boy|lady|kid|student|guy|woman|friend|mate|sister|brother|daughter|son|niece|nephew|cousin|neighbour)';
const forms = [
  `(ok|so|i'm|im|we're|i am|we are|i|we|i'll|we'll){0,2} (be)? (pay|paying|giving) (${single}|<who:word>) <amount>`,
  `<amount> (an|per|a|/|p|ph|p/h|phr){1,2} (/)? (hour|hr|h|hrs)? (for|to) (${single}|<who:word>) (,|-|:|for|on|from|tomorrow|today|<weekday>|<duration>|<count>|<time>)`,
].map((source) => pattern(source));
const several = /[^s]s$|^(us|of us|people|team|crew|staff|men|women|folk|ppl|hands|kids|karigars)$/;
const others = /^(everyone|everybody|each|all|both|them|us|me|myself|half|double|more|up|around|about|roughly|only|at|under|over)$/;

export const oneIsPaid = (reader: Reader, { start, end }: Part): boolean => {
  const { tokens } = reader;
  // "fri the casual's in for 6 hrs, she's on 32 an hour"
  const from = tokens[start]?.means['weekday'] === undefined ? start : start + (tokens[start + 1]?.text === ',' ? 2 : 1);
  if (oneHand.at(tokens, from, end) !== undefined) return true;
  return forms.some((form) => {
    const match = form.at(tokens, start, end);
    const { who, b } = match?.kept ?? {};
    if (match === undefined || several.test(b?.text ?? '')) return false;
    return who === undefined || (isUnlisted(who) && !notSomeone.test(who.text) && !others.test(who.text) && !/s$/.test(who.text));
  });
};
