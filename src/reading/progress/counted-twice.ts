// A count put right because something was counted twice: "only 24 were made actually, I'd counted one box twice", "22 done, not 24: I counted two twice".
// What was counted twice is no count of pieces.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { didWord, doneWord } from './done-words.ts';
import { amountOf } from './made-facts.ts';

const soft =
  '(,|-|;|:|\\(|\\.|so|and|because|cos|coz|as|since|oh|oops|whoops|sorry|soz|no|wait|ok|ah|argh|my bad|actually|correction|but|although|though){0,5}';
const twice =
  "((i|i'd|we|we'd|she|she'd|he|he'd|id|had|have|has|must have|must've|just){0,3} (counted|double counted|double-counted|entered|logged|added) (in)? (a|an|one|the|that|this|some|<owner>|<count>) (of them|of those|same|whole|last)? (<owner>|box|boxes|tray|trays|crate|crates|lot|batch|bag|row|rows|shelf|board|lot|ones|bouts|of them|<piece>)? (of them|of <piece>)? (twice|double|two times|in twice)?|(a|an|one|the|that|<count>) (of them|same)? (box|boxes|tray|trays|crate|crates|lot|batch|bag|row|rows|shelf|board|ones|<piece>)? (was|were|got|had been|has been|is)? (counted|entered|logged|in|there)? (twice|double))";
const who =
  "(i|we|she|he|i've|we've|there's|theres|it's|its|it is|it was|that's|there are|there were|have|had|make that|make it|should be){0,2}";
const some = '(<n:count>) (of them|of those|nos|pcs)? (<material>)? (<p:piece>)?';
const be = '(are|is|were|was|have been|got|been|actually|now|all|really){0,3}';
const not = '(,|-)? (not|and not|instead of|rather than) (the)? (<m:count>) (<piece>)?';
const said = `(only|just)? ${who} (only|just|really|actually)? ((${didWord}) ${some} (${doneWord})?|${some} ${be} (${doneWord})?) (actually|in fact|in the end|sorry|really|so far|in total|in all)? (${not})?`;
const why = `(for)? ${twice}`;
const forms = [
  `${soft} ${said} ${soft} ${why} (sorry|oops|soz|lol|my bad|actually|,){0,2}`,
  `${soft} ${why} ${soft} ${said} (sorry|now|lol|,){0,2}`,
].map((source) => pattern(source));
const doubled = pattern('(twice|double|double counted|double-counted|two times)');
const righted = pattern(
  "(only|just|actually|in fact|really|not|instead of|rather than|make that|make it|should be|so|sorry|correction|its|it's|it is)",
);
const finished = pattern(`(${didWord}|${doneWord})`);

const rightIn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const { tokens } = reader;
  if (asked || doubled.in(tokens, start, end) === undefined || finished.in(tokens, start, end) === undefined) return undefined;
  const match = firstAt(forms, tokens, start, end);
  const { n, m, p } = match?.kept ?? {};
  if (match?.end !== end || n === undefined) return undefined;
  const unsure = [n, m].some((token) => isRangeOrChoice(token?.number));
  // "did 24 but counted 2 twice": 24, or 22?
  if (unsure || righted.in(tokens, start, end) === undefined) return { start, end, held: true };
  const from = m === undefined ? {} : { from: amountOf(m) };
  return found(reader, start, end, [{ fact: 'change', what: 'made', to: amountOf(n), ...from, ...kindOf(p) }]);
};

export const countedTwice = (reader: Reader): Finding[] =>
  doubled.might(reader.tokens) ? reader.untouched().flatMap((part) => rightIn(reader, part) ?? []) : [];
