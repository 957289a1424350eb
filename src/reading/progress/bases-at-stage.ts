// Bases that are begun and have no flowers yet: "25 bases glued, no flowers on yet". None of them is made.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { stageOf, stageWord } from './done-words.ts';
import { amountOf } from './made-facts.ts';

const opens = "(ok|okay|right|so|and|update|,|just|only|we|i|have|got|we've|i've|ive|weve|there's|theres){0,3}";
const some = '<n:count> (of the|more|of|x|nos)? (<material>)? (<p:piece>)? (base|bases)';
const be = '(are|is|now|all|been|have been|just|got|the|about){0,3}';
const tail =
  "(today|now|so far|overnight|last night|this morning)? ((,|-|but|and|with|;){0,2} (no|without|not any|nothing|none|have no|haven't got|havent got|nowt) (<filler>){0,3} (on|in|added|attached|them|it|top|any){0,3} (yet|so far|still|tho|though|as yet)?|(,|-|but|and){0,2} (the)? <filler> (not|still not|isn't|aren't|still to go|to go|go|going|come|comes){1,2} (on|in)? (yet|later|next|tomorrow|tmrw|after|today){0,2})?";
const forms = [
  `${opens} ${some} ${be} (<w:word>) (up|on|in)? ${tail}`,
  `${opens} (<w:word>) ${be} ${some} ${tail}`,
  `${opens} (base|bases) ${be} (<w:word>) (up)? (for|on) ${be} <n:count> (of the|of)? (<material>)? (<p:piece>)? ${tail}`,
].map((source) => pattern(source));
const stages: ReadonlySet<string> = new Set(stageWord.split('|').filter((word) => !/^(started|begun|cut)$/.test(word)));

const basesIn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, end);
  const { n, w, p } = match?.kept ?? {};
  if (match?.end !== end || n === undefined || w === undefined || !stages.has(w.text)) return undefined;
  if (isRangeOrChoice(n.number)) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'made', count: amountOf(n), stage: stageOf(w.text), ...kindOf(p) }]);
};

const base = pattern('(base|bases)');
export const basesAtStage = (reader: Reader): Finding[] =>
  base.might(reader.tokens) ? reader.untouched().flatMap((part) => basesIn(reader, part) ?? []) : [];
