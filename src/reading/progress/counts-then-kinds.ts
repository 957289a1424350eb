// Counts first and their kinds behind, in the same order: "knocked out 8 n 3, bouts n corsages", "8 and 3 done, lapels and corsages".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { didWord, doneWord } from './done-words.ts';
import { amountOf } from './made-facts.ts';

const opens = "(ok|so|just|i|we|i've|we've|ive|weve|have|,|now){0,3}";
const joint = '(,|and|&|n|plus|\\+|/){1,2}';
const counts = `<a:count> ${joint} <b:count> (${joint} <c:count>)?`;
const kinds = `(the)? <x:piece> ${joint} (the)? <y:piece> (${joint} (the)? <z:piece>)?`;
const stop = '(,|-|:|of|\\(){1,2} (of|the|that is|thats)?';
const ends = '(respectively|in that order|\\)|today|now|so far|,|done|this morning|this arvo){0,3}';
const forms = [
  `${opens} (${didWord}) ${counts} ${stop} ${kinds} ${ends}`,
  `${opens} ${counts} (are|all|now){0,2} (${doneWord}) ${stop} ${kinds} ${ends}`,
  `${opens} ${kinds} (,|-|:|are|=){1,2} ${counts} (are|all|now){0,2} (${doneWord}) ${ends}`,
].map((source) => pattern(source));

const inTurn = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = firstAt(forms, reader.tokens, start, end);
  if (match?.end !== end) return undefined;
  const { a, b, c, x, y, z } = match.kept;
  const numbers = [a, b, c].filter((token) => token !== undefined);
  const named = [x, y, z].flatMap((token) => token?.means['piece'] ?? []) as PieceKind[];
  const unsure = numbers.some(({ number }) => isRangeOrChoice(number));
  if (unsure || numbers.length !== named.length || named.includes('unspecified') || new Set(named).size !== named.length)
    return { start, end, held: true };
  return found(
    reader,
    start,
    end,
    named.map((piece, at) => ({ fact: 'made', count: amountOf(numbers[at]), piece })),
  );
};

export const countsThenKinds = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => (part.asked || part.end - part.start > 24 ? [] : (inTurn(reader, part) ?? [])))
    : [];
