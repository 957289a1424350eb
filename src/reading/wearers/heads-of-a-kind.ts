// How many wear one kind, told as a headcount: "headcount for buttonholes is 13" counts the wearers and so the pieces.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';

const lead = '(so|ok|the|our|their|final|new|latest|total|full|confirmed|her|his){0,3}';
const heads =
  '(headcount|head count|wearer count|wearers|number of wearers|number wearing|people wearing|ppl wearing|number of people (wearing|needing|getting|having))';
const is = '(is|are|:|-|=|now|at|stands at|comes to|will be|up to|,){0,2} (now)?';
const tail = '(now|in all|total|in total|people|ppl|persons|wearers|<all>|please|pls){0,2}';
const forms = [
  `${lead} ${heads} (for|of|on|in)? (the|our)? (<material>)? <p:piece> ${is} <n:count> ${tail}`,
  `${lead} <p:piece> ${heads} ${is} <n:count> ${tail}`,
  `${lead} ${heads} ${is} <n:count> (people|ppl)? (for|on|in) (the|our)? (<material>)? <p:piece> ${tail}`,
  `${lead} <n:count> (is|was) (the|our|their) (final|new|total)? ${heads} (for|on) (the|our)? (<material>)? <p:piece>`,
].map((source) => pattern(source));
// "numbers for bouts are 13" counts pieces, whoever wears them.
const numbers = [
  `${lead} (number|numbers|count|tally) (for|of) (the|our)? (<material>)? <p:piece> (is|are|:|=|stands at|will be){1,2} <n:count> ${tail}`,
].map((source) => pattern(source));
const more = pattern(`(,|and|&|n|\\+|plus|;){1,2} (for)? (the)? (<material>)? <p:piece> (is|are|:|-|=)? <n:count> ${tail}`);
const price = pattern('(,|-|at|@){0,2} (<money>|<plain>) <each>');

interface Kind {
  readonly piece: PieceKind;
  readonly count: number;
}
const kindOf = ({ kept: { p, n } }: Match): Kind | undefined => {
  const piece = p?.means['piece'] as PieceKind | undefined;
  const count = isCount(n) && n?.number?.approx !== true && n?.number?.max === undefined ? Number(n?.number?.amount) : 0;
  return piece === undefined || piece === 'unspecified' || count < 1 ? undefined : { piece, count };
};

export const headsOfAKind = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const worn = firstAt(forms, tokens, part.start, part.end);
  const first = worn ?? firstAt(numbers, tokens, part.start, part.end);
  if (first === undefined || part.asked) return undefined;
  const matches = [first];
  for (let next = more.at(tokens, first.end, part.end); next !== undefined; next = more.at(tokens, next.end, part.end)) matches.push(next);
  const end = matches.at(-1)?.end ?? first.end;
  const kinds = matches.flatMap((match) => kindOf(match) ?? []);
  if (kinds.length < matches.length || new Set(kinds.map(({ piece }) => piece)).size < kinds.length) return undefined;
  // Its price is read with the order.
  if (end !== part.end && (kinds.length > 1 || price.at(tokens, end, part.end)?.end !== part.end)) return undefined;
  const [only] = kinds;
  return found(reader, part.start, end, [
    // Whoever wears two kinds is counted in both, so their sum is no headcount.
    ...(worn !== undefined && kinds.length === 1 && only !== undefined
      ? [{ fact: 'wearers' as const, wearers: [], total: only.count }]
      : []),
    ...kinds.map(({ piece, count }) => ({ fact: 'pieces' as const, piece, count })),
  ]);
};
