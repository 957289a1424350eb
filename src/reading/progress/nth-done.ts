// The first, second or third of them finished: "first crown done out of 6", "third corsage boxed", "first of the 6 crowns done". As many are made
// in all, and never a third of them or all of the kind.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { doneWord } from './done-words.ts';

const nths = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh', 'twelfth'];
const nth = `(<o:ordinal>|${nths.join('|')})`;
const lead = "(ok|so|yay|woo|phew|finally|just|now|and|but|that's|thats|got|finished|done|i've|we've|the|my|our|very){0,4}";
const be = '(is|now|all|just|got|has|been|finally|already|at last){0,3}';
const of = '(out of|of|outta) (the|our|my|those)? <m:count>';
const forms = [
  `${lead} ${nth} (<material>)? (<p:piece>|one) ${be} (${doneWord}) (${of} (<q:piece>)?)?`,
  `${lead} ${nth} (one)? ${of} (<material>)? (<p:piece>)? ${be} (${doneWord})`,
].map((source) => pattern(source));
const breaks = /^(,|;|-|and|but|so|!|\.|:|\()$/;
const goesOn = /^(,|;|-|and|but|so|n|&|!|\.|\)|with|now|lol|yay|woo|already|finally|today|phew|then)$/;

const startsAt = (tokens: readonly Token[], { start }: Part, index: number): boolean =>
  index === start || tokens[index - 1]?.kind === 'line' || breaks.test(tokens[index - 1]?.text ?? '');

const nthIn = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  for (const form of forms)
    for (let index = form.next(tokens, part.start, part.end); index < part.end; index = form.next(tokens, index + 1, part.end)) {
      const match = startsAt(tokens, part, index) ? form.at(tokens, index, part.end) : undefined;
      if (match === undefined) continue;
      const { o, p, q, m } = match.kept;
      const words = tokens.slice(match.start, match.end);
      const count =
        o === undefined ? nths.indexOf(words.find(({ text }) => nths.includes(text))?.text ?? '') + 1 : Number(o.number?.amount);
      const whole = m === undefined ? undefined : Number(m.number?.amount);
      const next = match.end < part.end ? tokens[match.end] : undefined;
      if (!(count > 0) || (p === undefined && m === undefined)) continue; // "first one done" may be a job
      // "first crown done by fri" is wanted then; in no case are all of them made.
      if (next !== undefined && next.kind !== 'line' && !goesOn.test(next.text)) return { start: match.start, end: part.end, held: true };
      // "first bouts done": how many is not said.
      const several = m === undefined && /[^s]s$/.test(p?.text ?? '');
      if (several || m?.number?.max !== undefined || (whole !== undefined && whole < count)) return { ...match, held: true };
      const of = whole === undefined ? {} : { of: whole, ...(whole === count ? { all: true as const } : {}) };
      return found(reader, match.start, match.end, [{ fact: 'made', count, ...of, total: true, ...kindOf(p ?? q) }]);
    }
  return undefined;
};

export const nthDone = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => (part.asked ? [] : (nthIn(reader, part) ?? [])))
    : [];
