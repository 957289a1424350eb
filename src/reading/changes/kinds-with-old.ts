// Kinds put right beside what each of them was: "bouts 12.50 rather than 12, corsages 28 rather than 26", "final numbers 22 bouts 7 corsages, down from 24 and 8".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type NumberRead, type Token } from '../text/token.ts';

const lead = pattern(
  "(ok|so|sorry|actually|no|oh|update|oops|and|,|:|-|(the)? (final|new|updated|latest|revised|confirmed|real) (numbers|count|counts|number|tally|headcount|order|prices|pricing|price list)|(numbers|count|counts|prices) (are|is|now)|now|it's|its|make it|make that|that's|thats|we're at|is|are|the){1,5}",
);
const joint = '(,|and|&|n|\\+|plus|;){0,2}';
const priced = pattern(
  `(the|our)? <p:piece> (are|is|at|now|to be|should be|:|@){0,2} <n:amount> (<each>)? (now)? (not|rather than|instead of|and not|was|were|up from|down from|from) <m:amount> (<each>)? ${joint}`,
);
const counted = pattern(`<n:count> (<material>)? <p:piece> ${joint}`);
const before = pattern(
  '(now|in all|total|done|made|finished|boxed|left)? (,|-|\\()? (down|up)? (from|was|were|not|instead of|rather than|used to be|it was)',
);
const old = pattern(`<x:plain> ${joint} (respectively|before|earlier|\\)){0,2}`);
const most = 6;

const listOf = (form: typeof old, tokens: readonly Token[], start: number, end: number): readonly Match[] => {
  const matches: Match[] = [];
  for (let at = start; at < end && matches.length < most; ) {
    const match = form.at(tokens, at, end);
    if (match === undefined) break;
    matches.push(match);
    at = match.end;
  }
  return matches;
};
const kindOf = (match: Match): PieceKind | undefined => {
  const kind = match.kept['p']?.means['piece'] as PieceKind | undefined;
  return kind === 'unspecified' ? undefined : kind;
};
const allApart = (kinds: readonly (PieceKind | undefined)[]): boolean =>
  kinds.every((kind) => kind !== undefined) && new Set(kinds).size === kinds.length;

// "12.50", "£12": no number of pieces. "2.30" may be an hour.
const isPrice = (number: NumberRead): boolean => number.form === 'money' || (/[.,]/.test(number.amount) && Number(number.amount) >= 5);

const pricesAnew = (reader: Reader, start: number, end: number): readonly Unworded[] | undefined => {
  const items = listOf(priced, reader.tokens, start, end);
  if (items.at(-1)?.end !== end || !allApart(items.map(kindOf))) return undefined;
  const numbers = items.map(({ kept }) => [kept['n']?.number, kept['m']?.number] as const);
  if (!numbers.flat().every(isSingle) || !numbers.some((pair) => pair.some((number) => isSingle(number) && isPrice(number))))
    return undefined;
  return items.map((item, at): Unworded => {
    const [to, from] = numbers[at] as readonly [NumberRead, NumberRead];
    const piece = kindOf(item) as PieceKind;
    return { fact: 'change', what: 'price', to: to.amount, from: from.amount, per: 'each', ...currencyFields(to), piece };
  });
};

const countsAnew = (reader: Reader, start: number, end: number): readonly Unworded[] | undefined => {
  const { tokens } = reader;
  const items = listOf(counted, tokens, start, end);
  const from = items.at(-1)?.end ?? start;
  // The list takes the comma behind it.
  const marker = before.at(tokens, from, end);
  if (items.length < 2 || marker === undefined || !allApart(items.map(kindOf))) return undefined;
  // "22 bouts 7 corsages done, was 24 and 8" counts work, of two kinds at once.
  const ofWork = /^(done|made|finished|boxed|left)$/.test(tokens[marker.start]?.text ?? '');
  const olds = listOf(old, tokens, marker.end, end);
  if (ofWork && olds.length > 0) return [];
  const numbers = items.map(({ kept }, at) => [kept['n']?.number, olds[at]?.kept['x']?.number] as const);
  // "22 bouts 7 corsages, down from 24": which of them it was is not said.
  const short = olds.length > 0 && olds.length < items.length && tokens[marker.end - 1]?.text === 'from';
  if (short && olds.at(-1)?.end === end) return [];
  if (olds.length !== items.length || olds.at(-1)?.end !== end || !numbers.flat().every(isSingle)) return undefined;
  return items.map((item, at): Unworded => {
    const [to, was] = numbers[at] as readonly [NumberRead, NumberRead];
    return { fact: 'change', what: 'count', to: Number(to.amount), from: Number(was.amount), piece: kindOf(item) as PieceKind };
  });
};

/** Each kind's new number with the old one; nothing unless every word is understood. */
export const kindsWithOld = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (!before.might(tokens) || (!priced.might(tokens) && !counted.might(tokens))) return undefined;
  const start = lead.at(tokens, part.start, part.end)?.end ?? part.start;
  const facts = pricesAnew(reader, start, part.end) ?? countsAnew(reader, start, part.end);
  if (facts?.length === 0) return { start: part.start, end: part.end, held: true };
  return facts === undefined ? undefined : found(reader, part.start, part.end, facts);
};
