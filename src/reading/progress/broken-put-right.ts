// How many broke, put right: "no only 1 broke", "sorry just two snapped", "nope we only lost 1". It is said of what broke before, and breaks no more.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { goneWrong, lossDone } from './losses.ts';

// "sorry 2 broke" may be the first word of it; with "only" it is less than was said.
const no = '(no|nope|nah|no wait|no sorry|sorry no|wait no|correction|i meant|meant|i mean|or rather|,|-){1,4}';
const soft = '(sorry|soz|oops|whoops|actually|wait|hang on|hold on|tell a lie|oh|ah|ok|,|-){1,3}';
const was = "(it was|it's|its|was|there was|there's|actually|sorry|in fact|,){0,3}";
const only = '(only|just|merely)';
const these = '(of)? (the|them|those|my|our)? (<p:piece>|ones|one)? (are|is|were|was|have|has|that)? (got|actually|really)? (just)?';
const after = '(sorry|soz|oops|thank god|phew|actually|thankfully|luckily|not more|in the end|,){0,2}';
const forms = [
  pattern(`${no} ${was} (${only})? (the)? <n:count> ${these} (${goneWrong}) ${after}`),
  pattern(`${soft} ${was} ${only} (the)? <n:count> ${these} (${goneWrong}) ${after}`),
  pattern(`${no} ${was} (i|we)? (${only})? (i|we)? (${lossDone}) (${only})? <n:count> (of)? (the|them|those)? (<p:piece>)? ${after}`),
  pattern(`${soft} ${was} (i|we)? ${only} (${lossDone}) <n:count> (of)? (the|them|those)? (<p:piece>)? ${after}`),
];

export const brokenPutRight = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, end);
  const count = match?.kept['n']?.number;
  if (match?.end !== end || count === undefined) return undefined;
  if (isRangeOrChoice(count)) return { start, end, held: true };
  const piece = ofKind(match.kept['p']?.means['piece'] as PieceKind | undefined);
  return found(reader, start, end, [{ fact: 'change', what: 'broke', to: Number(count.amount), ...piece }]);
};
