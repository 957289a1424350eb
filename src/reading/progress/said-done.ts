// What was said to be finished and is not: "the 6 corsages i said were done arent, only 2 are".

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { doneWord } from './done-words.ts';
import { pieceIn } from './made-facts.ts';

const told = '(i|we|she|he|they|you) (had|have)? (said|say|told you|told|logged|put|put down|counted|marked|wrote|called|reported)';
const no =
  "(aren't|arent|are not|weren't|werent|were not|isn't|isnt|is not|haven't been|havent been|not|are nowhere near|aren't all|arent all|are not all|werent all|weren't all)";
const claim = `(ok|sorry|oops|actually|so|,){0,2} (the|those|them|all)? <n:count> (<material>)? (<p:piece>)? (that|which)? ${told} (as|is|are|was|were|had been|have been)? (all)? (${doneWord})? ${no} (quite|really|actually|in fact|all)? (${doneWord})?`;
const really = `(,|-|:|;|\\.|but|so|and){0,3} (it's|its|there's|theres|that's|really|actually|in fact)? (only|just|more like|really|actually)? <m:count> (of them|of those)? (are|is|were|have been)? (${doneWord}|actually|really|in fact|so far|sorry){0,2}`;
const both = pattern(`${claim} ${really}`);
const alone = pattern(claim);

export const saidDone = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = both.at(reader.tokens, start, end);
  const { n, m } = match?.kept ?? {};
  if (match?.end === end && isSingle(n?.number) && isSingle(m?.number) && Number(m.number.amount) < Number(n.number.amount))
    return found(reader, start, end, [
      { fact: 'change', what: 'made', to: Number(m.number.amount), from: Number(n.number.amount), ...pieceIn(match) },
    ]);
  // How many are finished is not said: no number of it is one that is wanted.
  return alone.at(reader.tokens, start, end) === undefined ? undefined : { start, end, held: true };
};
/** Whether anything of the kind could stand in the message. */
export const mayBeSaidDone = ({ tokens }: Reader): boolean => alone.might(tokens);
