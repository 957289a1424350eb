// "the 10 I logged were combs not crowns", "those 6 done were corsages, not bouts": so many made stand under the wrong kind, and go over to the other.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const opens = '(sorry|soz|oops|whoops|ah|oh|no|wait|actually|ok|so|btw|fyi|,|-|:){0,4}';
const told =
  "((that)? (i|we|i'd|we'd|she|he)? (just|had|already|have|got)? (logged|reported|made|finished|completed|boxed|counted|did|said (were|was|are|i did|i made|i'd done|we made)|put (down|in)? as (done|made)|done|made))";
const when = '(earlier|before|just now|this morning|yesterday|last night|today|this arvo|this afternoon|as done|as made|done|made)?';
const were =
  "(were|was|are|is|should be|shd be|should've been|shouldve been|should have been|were meant to be|was meant to be|they were|it was|they're) (all|actually|really|in fact)?";
const not = '(,|-)? (not|and not|instead of|rather than)';
const ends = '(sorry|soz|oops|,|my bad|my mistake|lol){0,2}';
const lead = `${opens} (the|those|that|these|my|last)? (last)? <n:count> (of them|of those|ones|nos|pcs)?`;
const forms = [
  `${lead} ${told} ${when} ${were} <b:piece> ${not} (the)? <a:piece> ${ends}`,
  `${lead} ${told} ${when} (down|in)? (as|under|against) <a:piece> (,|but|-)? ${were} <b:piece> ${ends}`,
  `${opens} (i|we|i'd|we'd)? logged (the|those|that|these)? (last)? <n:count> (<material>)? <a:piece> (,|-|but|and){0,2} (${were}|meant|i meant|should say) <b:piece> ${ends}`,
  `${opens} (i|we|i'd|we'd)? logged (the|those|that|these)? (last)? <n:count> (as|under|against) <a:piece> (,|-|but|and){0,2} (${were}|meant|i meant|should say) <b:piece> ${ends}`,
].map((source) => pattern(source));
// "those 10 were combs not crowns": ordered, or made?
const either = pattern(
  `${opens} (the|those|that|these|last) (last)? <n:count> (of them|ones)? ${were} <b:piece> ${not} (the)? <a:piece> ${ends}`,
);

const findIn = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  const match = asked ? undefined : firstAt([...forms, either], reader.tokens, start, end);
  if (match === undefined) return [];
  // With more behind it, it is no change of the order either.
  if (match.end !== end) return [{ start, end, held: true }];
  const { a, b, n } = match.kept;
  const [from, to] = [a?.means['piece'], b?.means['piece']] as [PieceKind | undefined, PieceKind | undefined];
  const unsure = isRangeOrChoice(n?.number) || from === to || [from, to].includes('unspecified');
  if (from === undefined || to === undefined || unsure || either.at(reader.tokens, start, end) !== undefined)
    return [{ start, end, held: true }];
  const count = Number(n?.number?.amount);
  return [
    found(reader, start, end, [
      { fact: 'change', what: 'made', by: -count, piece: from },
      { fact: 'made', count, piece: to },
    ]),
  ];
};

export const loggedAs = (reader: Reader): Finding[] =>
  [...forms, either].some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => findIn(reader, part)) : [];
