// What was said to be made, and what a second count gave: "I told you I'd made sixteen but I've counted the tray again and it's only thirteen".

import { firstIn, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const worked = '(made|done|finished|completed|boxed|ready|wired and boxed)';
const have = "(i'd|id|we'd|i had|we had|i've|we've|ive|weve|i|we|she'd|he'd|that|were|was|there were)";
const some = '(about|all)? <n:count> (of the|of them|of|nos|pcs)? (<material>)? (<p:piece>)?';
const claimed =
  "(said|told (you|u|her|him|them|everyone)|thought|reckoned|wrote|logged|reported|put (it|that|them)? (down)? (as)?|had (it|that|them)? (down)? (as)?|noted|claimed|(i'd|id|we'd) (said|told (you|u)|thought|logged|put (it)? (down)?|noted|reported))";
const claims = [
  `${claimed} (that|earlier|before|yesterday|this morning|you)? ${have}{0,2} (already|just)? (made|done|finished|completed|boxed) ${some}`,
  `${claimed} (that|earlier|before|yesterday|this morning)? ${have}? ${some} (were|was|are|as|is|all)? ${worked}`,
].map((source) => pattern(source));
const turn = pattern(
  "(but|turns out|it turns out|only|actually|when|counted|recounted|counting|having counted|,|and it turns out|;|-|and (it's|its|it is|it was|there were|there was|that was|in fact|really|only))",
);
// "it's only thirteen", "there were nine in the box", "we've only got nineteen done".
const recounted = pattern(
  "(it's|its|it was|it is|there's|there're|there are|there were|there was|that's|thats|i'd|we'd|i've|we've|i|we|is|was|are|were|have|had|got|made|make it|makes it|made it|only|just|actually|really|in fact) (only|just|actually|really|got|have|had|made|done|in fact){0,3} <m:count> (of them|of those|<q:piece>)? (done|made|finished|there|in the (box|tray|fridge|cooler|crate|boxes|trays)|in (total|all)|boxed|on the tray)?",
);
const another =
  /^(year|last year|month|more|left|go|for|each|order|ordered|broke|broken|snapped|ruined|dropped|fell|if|would|could|should|need|needs|want|wants|will|spare|spares|mins|minutes|hours|today)$/;

const findIn = ({ tokens }: Reader, part: Part): { count: number; from: number; kind: ReturnType<typeof kindOf> } | undefined => {
  const said = firstIn(claims, tokens, part.start, part.end);
  const { n, p } = said?.kept ?? {};
  if (said === undefined || n === undefined || turn.in(tokens, said.end, part.end) === undefined) return undefined;
  const numbers = tokens.slice(part.start, part.end).filter(({ number, text }) => number !== undefined && text !== 'one');
  const again = recounted.in(tokens, said.end, part.end);
  const { m, q } = again?.kept ?? {};
  if (again === undefined || m === undefined || numbers.length !== 2 || !numbers.includes(m) || !numbers.includes(n)) return undefined;
  if ([n, m].some(({ number }) => isRangeOrChoice(number) || number?.form !== 'plain')) return undefined;
  if (tokens.slice(said.start, part.end).some(({ text }) => another.test(text))) return undefined;
  const next = tokens[again.end];
  if (
    again.end < part.end &&
    next?.kind === 'word' &&
    !/^(and|so|not|now|sorry|because|cos|as|after|oops|lol|really|actually|tho|though|apologies|soz)$/.test(next.text)
  )
    return undefined;
  const pieces = tokens.slice(part.start, part.end).flatMap(({ means }) => means['piece'] ?? []);
  if (new Set(pieces).size > 1) return undefined;
  return { count: amountOf(m), from: amountOf(n), kind: kindOf(p ?? q) };
};

const regrets = /^(sorry|soz|oops|whoops|apologies|wrong|wrongly|mistake|miscounted)$/;
const putRight = /^(should|shud|shd|shld|shouldve|should've|should be|meant|mean|i meant|i mean|not|typo|instead|actually|make)$/;
const regretted = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end);
  const counts = words.filter(({ number, text }) => number?.form === 'plain' && text !== 'one').length;
  if (counts <= 1 || words.some(({ text }) => putRight.test(text))) return false; // others read what they put right
  return words.some(({ text }) => regrets.test(text)) && firstIn(claims, tokens, start, end) !== undefined;
};

export const recountedWork: Phrase = {
  name: 'work counted again',
  examples: [],
  find: (reader): Finding[] =>
    claims.some((form) => form.might(reader.tokens))
      ? reader.untouched().flatMap((part) => {
          const read = part.asked ? undefined : findIn(reader, part);
          // What was told and is put right by words nobody read is not what is made.
          if (read === undefined && !part.asked && regretted(reader, part)) return [{ start: part.start, end: part.end, held: true }];
          return read === undefined
            ? []
            : [found(reader, part.start, part.end, [{ fact: 'change', what: 'made', to: read.count, from: read.from, ...read.kind }])];
        })
      : [],
};
