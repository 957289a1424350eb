// Pieces numbered as they are made: "buttonholes 1 to 15 done, on to 16" are fifteen made in all. Only from the first: of "16 to 20" nobody
// says that the others are.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { didWord, doneWord } from './done-words.ts';

const lead = "(ok|so|just|finally|now|got|i've|we've|ive|weve|i|we|have|the|my|our|that's|thats|yay|phew){0,4}";
const numbers =
  '(no|nos|number|numbers|:|\\.){0,2} (<n:count> (thru|through|until|up to|upto|<upTo>) (and including|incl)? <m:count>|<h:any> (-|to|thru|through) <m:count>|<n:count>)';
const be = '(are|is|all|now|just|have been|been|both|have){0,3}';
const mark = '(,|-|;|so|and|now|then|\\.){0,3}';
const goesOn = `(${mark} (on to|onto|moving on to|moving to|on|starting on|starting with|starting|start|doing|next is|next up|next|up next) (number|no|piece|<piece>)? <x:count> (now|next)?|${mark} <x:count> (next|is next|next up|up next))?`;
const forms = [
  pattern(`${lead} <p:piece> ${numbers} ${be} (${doneWord}) ${goesOn}`),
  pattern(`${lead} (${didWord}) (the|my|our)? <p:piece> ${numbers} ${goesOn}`),
];
const ends = /^(,|;|-|and|but|so|!|\.|\)|now|lol|yay|today|phew|then|this|already|before)$/;
const fewest = 4; // "bouts 1-2 done" may be one or two of them

const numberedIn = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  for (const form of forms) {
    const match = form.at(tokens, part.start, part.end);
    if (match === undefined) continue;
    const { n, m, h, p, x } = match.kept;
    const first = h === undefined ? n?.number?.amount : h.text.replace('#', '');
    const last = Number(m === undefined ? n?.number?.max : m.number?.amount);
    const ranged = m === undefined ? n?.number?.or === undefined && n?.number?.max !== undefined : m.number?.max === undefined;
    if (!ranged || (h !== undefined && !/^#\d+$/.test(h.text))) continue;
    const next = x?.number;
    const follows = next !== undefined && next.max === undefined && Number(next.amount) === last + 1;
    const stop = match.end < part.end ? tokens[match.end] : undefined;
    const closed = stop === undefined || stop.kind === 'line' || ends.test(stop.text);
    if (first !== '1' || !(last >= fewest || follows) || (next !== undefined && !follows) || !closed) return { ...match, held: true };
    return found(reader, match.start, match.end, [{ fact: 'made', count: last, total: true, ...kindOf(p) }]);
  }
  return undefined;
};

export const numberedDone = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => (part.asked ? [] : (numberedIn(reader, part) ?? [])))
    : [];
