// "yesterday evening 8 nos done, today morning 5 nos", "yesterdays 12 + todays 9 done": what each day made, together.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import { amountOf, kindOf } from '../progress/made-facts.ts';
import type { Part } from '../text/message.ts';

const half = '(morning|evening|afternoon|night|arvo|noon|itself)';
const before = `(yesterday|yesterday's|yesterdays|last night|yest|<weekday>) ${half}? (:|-|,)?`;
const after = `(today|today's|todays|tonight|this ${half}|now|just now) ${half}? (:|-|,)?`;
const made = `(i|we)? (${didWord})? (about|another)?`;
const nos = '(nos|no|pcs|pieces|more)?';
const done = `(are|were|got)? (${doneWord})?`;
const form = pattern(
  `(ok|so|hi|,){0,2} ${before} ${made} <n:count> ${nos} (<p:piece>)? ${done} (,|and|then|;|\\+|&|plus|-){1,2} ${after} ${made} <m:count> ${nos} (<q:piece>)? ${done} (so far|only|sir|madam|,){0,2}`,
);
const work = new RegExp(
  `^(${[didWord, doneWord]
    .flatMap((list) => list.split('|'))
    .filter((word) => !/[ ()]/.test(word))
    .join('|')})$`,
);

const findIn = (reader: Reader, part: Part): Finding[] => {
  const match = part.asked ? undefined : form.at(reader.tokens, part.start, part.end);
  const { n, m, p, q } = match?.kept ?? {};
  if (match?.end !== part.end || n?.number?.max !== undefined || m?.number?.max !== undefined) return [];
  const other = p !== undefined && q !== undefined && p.means['piece'] !== q.means['piece'];
  const told = reader.tokens.slice(part.start, part.end).some(({ text }) => work.test(text));
  // Of two kinds, or with no word of work, it may be an order.
  if (other || !told) return [{ start: part.start, end: part.end, held: true }];
  return [found(reader, part.start, part.end, [{ fact: 'made', count: amountOf(n) + amountOf(m), ...kindOf(p ?? q) }])];
};

export const madeByDays: Phrase = {
  name: 'made by days',
  examples: [],
  find: (reader) => (form.might(reader.tokens) ? reader.untouched().flatMap((part) => findIn(reader, part)) : []),
};
