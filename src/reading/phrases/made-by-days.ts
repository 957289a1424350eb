// "yesterday evening 8 nos done, today morning 5 nos", "6 buttonholes before lunch and 8 after": what each day or each half of one made, together.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

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

// Nobody orders round a meal; a day's halves may be those of two events.
const count = (n: string, p: string): string => `(about|another)? <${n}:count> ${nos} (<material>)? (<${p}:piece>)? ${done}`;
const meal = '(lunch|smoko|tea|dinner|coffee|brekkie|breakfast|break|morning tea|arvo tea|elevenses|tiffin)';
const then = '(,|and|then|;|\\+|&|n|plus|-|another){0,2}';
const closes = '(so far|today|now|lads|team|boss|yay|,|!){0,2}';
const roundMeal = pattern(
  `(ok|so|i|we|,){0,2} ${count('n', 'p')} (before|b4) ${meal} ${then} ${count('m', 'q')} (after|since) ${meal}? ${closes}`,
);
const halves = pattern(
  `(ok|so|,){0,2} ${count('n', 'p')} (this|yesterday|in the)? (morning|am|arvo|afternoon|yesterday|last night|yest) ${then} ${count('m', 'q')} (this|in the|so far)? (arvo|afternoon|pm|evening|today|tonight|morning|after lunch|since) (<piece>)? ${closes}`,
);
const byHalves = (reader: Reader, part: Part): Finding[] => {
  const { start, end, asked } = part;
  const meals = asked ? undefined : roundMeal.at(reader.tokens, start, end);
  const match = meals ?? (asked ? undefined : halves.at(reader.tokens, start, end));
  if (match?.end !== end) return [];
  const { n, m, p, q } = match.kept;
  const told = reader.tokens.slice(start, end).some(({ text }) => work.test(text));
  if (meals === undefined && told) return []; // read as work by others
  const unsure = [n, m].some((token) => isRangeOrChoice(token?.number));
  const asks = /\b(please|pls|plz)\b/i.test(reader.message.clean.text); // to be done, then
  if (meals === undefined || unsure || asks || (p === undefined && q !== undefined)) return [{ start, end, held: true }];
  const two = p !== undefined && q !== undefined && kindOf(p).piece !== kindOf(q).piece;
  const facts: Unworded[] = two
    ? [
        { fact: 'made', count: amountOf(n), ...kindOf(p) },
        { fact: 'made', count: amountOf(m), ...kindOf(q) },
      ]
    : [{ fact: 'made', count: amountOf(n) + amountOf(m), ...kindOf(p ?? q) }];
  return [found(reader, start, end, facts)];
};

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
  find: (reader) => {
    if (form.might(reader.tokens)) return reader.untouched().flatMap((part) => findIn(reader, part));
    const likely = roundMeal.might(reader.tokens) || halves.might(reader.tokens);
    return likely ? reader.untouched().flatMap((part) => byHalves(reader, part)) : [];
  },
};
