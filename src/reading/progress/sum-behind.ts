// "morning lot did 18, arvo lot did 14, thats 32 all up": what several made, with its sum behind, is one whole. A sum that does not come out leaves it unread.

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';
import { didWord, intent } from './done-words.ts';
import { amountOf } from './made-facts.ts';
import { dayTold, noName } from './work-forms.ts';

const all = '(<all>|total|in total|in all|all in all|all up|all told|altogether|all together|overall|combined)';
const soFar = '(now|so far|sofar|to date|up to now)';
const behind = `(${all}|${soFar}|done|made|finished|today|between (us|them|the (two|lot) of (us|them)))`;
const wholes = [
  `(so|and|which|,|-|that){0,2} (that's|thats|that is|makes|makes it|makes that|making|making it|adds up to|comes to|=|equals|totals|totalling|grand total|${all}) (now|it|is|us|at|to|of|:|-|=|a total of){0,2} <n:count> (<p:piece>)? ${behind}{0,3}`,
  `(so|and|,|-|=){0,2} <n:count> (<p:piece>)? (done|made|finished)? (${all}|${soFar}) ${behind}{0,2}`,
].map((source) => pattern(source));
// "jo did 6, i did 8, so 14 crowns": theirs together, whatever was made before.
const theirs = pattern("(,|-)? (so|hence|therefore|meaning) (we've|we have|it's|its)? <n:count> (<p:piece>)? (done|made|finished)?");
const isSoFar = new RegExp(`^${soFar}$`);
const handful = pattern(`(${didWord}) (about|another|all|the|just|only){0,2} <n:count> (x|more|other|of|the|<material>){0,3} (<p:piece>)?`);
// "… and 14 this arvo", "…, ana ten", "… 3 corsages"
const another = pattern('(,|and|&|n|plus|then){0,2} (<w:unlisted>)? (another)? <n:count> (more)? (<p:piece>)?');
const isJoint = /^(,|and|&|n|plus|then)$/;
const goesOn =
  /^(,|-|;|\)|!|\.|and|so|but|which|n|&|with|lol|yay|woo|lads|guys|girls|team|folks|boss|thanks|ta|cheers|off|x|xx|then|i|we|not)$/;
const otherwise =
  /^(not|never|no|none|nobody|noone|left|broke|broken|snapped|lost|order|ordered|each|instead|said|meant|typo|counted|correction|sorry|actually|oops)$/;

interface Handfuls {
  readonly start: number;
  readonly counts: readonly { readonly count: number; readonly kind: Token | undefined }[];
}

// Every number of the stretch has to be what somebody made.
const handfulsIn = ({ tokens, free }: Reader, start: number, end: number): Handfuls | undefined => {
  const counts: { count: number; kind: Token | undefined }[] = [];
  let first = end;
  for (let index = start; index < end; index++) {
    const token = tokens[index] as Token;
    if (!free(index) || intent.has(token.text) || otherwise.test(token.text)) return undefined;
    const more = counts.length === 0 ? undefined : another.at(tokens, index, end);
    const who = more?.kept['w'];
    const named = more?.kept['p'] !== undefined && counts.at(-1)?.kind !== undefined;
    const told =
      more !== undefined &&
      (who === undefined ? named || dayTold.at(tokens, more.end, end) !== undefined : isJoint.test(token.text) && !noName.test(who.text));
    const match = handful.at(tokens, index, end) ?? (told ? more : undefined);
    const number = match?.kept['n']?.number;
    if (match === undefined || number === undefined) {
      if (token.number !== undefined || token.means['piece'] !== undefined) return undefined;
      continue;
    }
    if (number.max !== undefined || number.or !== undefined) return undefined;
    first = Math.min(first, index);
    counts.push({ count: amountOf(match.kept['n']), kind: match.kept['p'] });
    index = match.end - 1;
  }
  return { start: first, counts };
};

const total = (counts: Handfuls['counts']): number => counts.reduce((sum, { count }) => sum + count, 0);

// One whole where they are of one kind; a whole of each kind where every handful names its own.
const factsOf = (counts: Handfuls['counts'], whole: Match, adds: boolean): readonly Unworded[] | undefined => {
  const said = kindOf(whole.kept['p']).piece;
  const named = counts.map(({ kind }) => kindOf(kind).piece);
  const kinds = [...new Set([...named, said].flatMap((piece) => piece ?? []))];
  const [only, other] = kinds;
  const count = amountOf(whole.kept['n']);
  if (other === undefined)
    return [{ fact: 'made', count, ...(adds ? {} : { total: true }), ...(only === undefined ? {} : { piece: only }) }];
  if (said !== undefined || named.some((piece) => piece === undefined)) return undefined;
  return kinds.map((piece) => ({
    fact: 'made',
    count: total(counts.filter((_, at) => named[at] === piece)),
    ...(adds ? {} : { total: true }),
    piece,
  }));
};

const wholeIn = ({ tokens, free }: Reader, { start, end, asked }: Part): Match | undefined => {
  if (asked) return undefined;
  let last: Match | undefined;
  for (const form of wholes)
    for (let from = start; from < end; ) {
      const match = form.in(tokens, from, end);
      if (match === undefined) break;
      if (last === undefined || match.end > last.end) last = match;
      from = match.end;
    }
  last ??= theirs.in(tokens, start, end);
  const next = last === undefined || last.end >= end ? undefined : tokens[last.end];
  const number = last?.kept['n']?.number;
  const unsure = isRangeOrChoice(number) || (next !== undefined && !goesOn.test(next.text));
  return last === undefined || unsure || !free(last.start) || !free(last.end - 1) ? undefined : last;
};

/** What several made, with the whole said behind; held where the whole is another than the sum. */
export const sumsBehind = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  if (!handful.might(tokens) || ![...wholes, theirs].some((form) => form.might(tokens))) return [];
  const parts = reader.untouched();
  const findings: Finding[] = [];
  for (const [at, part] of parts.entries()) {
    const whole = wholeIn(reader, part);
    if (whole === undefined) continue;
    const count = amountOf(whole.kept['n']);
    let several: Handfuls | undefined;
    for (let from = at; from >= 0 && from > at - 6; from--) {
      const before = parts[from] as Part;
      // Sentences one after another, and nothing between them.
      if (before.asked || (from < at && (parts[from + 1] as Part).start - before.end > 2)) break;
      const told = handfulsIn(reader, before.start, whole.start);
      if (told === undefined) break;
      if (told.counts.length < 2) continue;
      several = told;
      if (total(told.counts) === count) break;
    }
    if (several === undefined) continue;
    const running = tokens.slice(whole.start, whole.end).some(({ text }) => isSoFar.test(text)) && count > total(several.counts);
    const facts =
      running || total(several.counts) === count
        ? factsOf(several.counts, whole, theirs.at(tokens, whole.start, whole.end)?.end === whole.end)
        : undefined;
    const { start } = several;
    findings.push(facts === undefined ? { start, end: whole.end, held: true } : found(reader, start, whole.end, facts));
  }
  return findings;
};
