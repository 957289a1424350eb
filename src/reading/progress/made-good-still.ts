// What broke, made again, and what that leaves: "broke 2 remade both so still 20". The last number is all that is made.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { doneWord } from './done-words.ts';
import { goneWrong, lossVerb } from './losses.ts';
import { amountOf } from './made-facts.ts';

const lead = '(oops|whoops|argh|ugh|damn|oh|ok|so|,|we|i|had){0,3}';
const lost = `((${lossVerb}) (another|about)? (<l:count>|one|a) (of them|of the)? (<material>)? (<k:piece>)?|(another)? (<l:count>|one) (of them|of the)? (<material>)? (<k:piece>)? (has|have|just|got|were|was|are){0,2} (${goneWrong})) (on me|on us|overnight|in the (heat|van|fridge)|again|earlier|today|this morning)?`;
const again =
  "(we|i|ive|we've|i've|have|just|already){0,2} (remade|redid|redone|rebuilt|replaced|rewired|fixed) (<a:count> of (them|those)|all <a:count>|<w:word> of them|<w:word>|that one)";
const joint = '(,|-|;|and|but|then|so|n|&){0,2}';
const leaves = "(we're|i'm|im|it's|its|that's|thats|we are|i am){0,1}";
const forms = [
  `${lead} ${lost} ${joint} ${again} ${joint} ${leaves} (still|now still|back) (on|at|to|up to)? <n:count> (of them)? (<material>)? (<p:piece>)? (are|all){0,1} (${doneWord}|left|to go|to do|to make|left to do|left to make|still to do)? (now|in all|in total|so far|lol){0,1}`,
  `${lead} ${lost} ${joint} ${again} ${joint} ${leaves} <n:count> (of them)? (<material>)? (<p:piece>)? still (${doneWord})?`,
].map((source) => pattern(source));
const toMake = /\b(left|to (go|do|make))( now| lol)?$/i;
const them = /^(them|both|it|all|these|those)$/;

const read = (reader: Reader, part: Part): Finding[] => {
  const match = part.asked ? undefined : firstAt(forms, reader.tokens, part.start, part.end);
  if (match?.end !== part.end) return [];
  const { l, a, w, n, k, p } = match.kept;
  const [count, made] = [l === undefined ? 1 : amountOf(l), a === undefined ? undefined : amountOf(a)];
  const unsure = [l, a, n].some((token) => isRangeOrChoice(token?.number));
  const word = w?.text ?? 'them';
  // "broke 3, remade both" does not add up, nor does "broke 2, remade it".
  const odd = (word === 'both' && count !== 2) || (word === 'it' && count !== 1) || (made !== undefined && made !== count);
  if (unsure || odd || !them.test(word)) return [{ start: part.start, end: part.end, held: true }];
  const kind = kindOf(k ?? p);
  return [
    found(reader, part.start, part.end, [
      { fact: 'broke', count, ...kind },
      { fact: 'made', count, remade: true, ...kind },
      toMake.test(reader.words(match.start, match.end))
        ? { fact: 'left', count: amountOf(n), ...kindOf(p ?? k) }
        : { fact: 'made', count: amountOf(n), total: true, ...kindOf(p ?? k) },
    ]),
  ];
};

export const madeGoodStill = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => read(reader, part)) : [];
