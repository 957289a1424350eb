// Several pieces for each wearer: "24 bouts, 2 each for the ushers" are twelve ushers, "6 bridesmaids, 2 combs each" twelve combs.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { nameOf } from './role-counts.ts';

const lead = '(ok|so|and|need|needs|we need|they need|she needs|wants|want|we|have|:|,){0,3}';
const whole = "(<t:count> (<material>)? <p:piece> (,|-|:|=|\\(|so|that's|thats|is|are|at){0,2})?";
const forms = [
  `${lead} ${whole} <k:count> (<material>)? (<q:piece>)? (each|apiece|a piece) (for|to) (the|all|all the|our|his|her)? (<n:count>)? (of the)? <r:role> (\\))?`,
  `${lead} ${whole} <k:count> (<material>)? (<q:piece>)? (per|for each|for every|to each|to every) <r:role> (\\))?`,
  `${lead} (the|our)? <n:count> <r:role> (,|-|:|get|gets|need|with|having|wear|wearing|want|and|are having){0,2} <k:count> (<material>)? <q:piece> (each|apiece|a piece)`,
  `${lead} (the|our)? <r:role> x <n:count> (,|-|:|get|need|with|having|wear){0,2} <k:count> (<material>)? <q:piece> (each|apiece|a piece)`,
].map((source) => pattern(source));
// "12 corsages, 2 each for the mums and nans": how many of either is not said; nor in "ushers 2 each".
const others = pattern('(,|and|&|\\+|n|plus|or){1,2} (the|both|our|his|her)? (<count>)? <role>');
const unsaid = pattern(`${lead} (the|our)? <role> (x|:|-)? <k:count> (each|apiece)`);
const most = 4; // nobody wears more; "6 ushers, 12 each" is a price
const goesOn = /^(,|\.|;|-|and|at|@|plus|\+|&|please|pls|inc|incl|ex|for)$/;

export const severalEach = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = firstAt(forms, tokens, part.start, part.end);
  const alone = match === undefined ? unsaid.at(tokens, part.start, part.end) : undefined;
  if (alone?.end === part.end && Number(alone.kept['k']?.number?.amount) <= most) return { start: part.start, end: part.end, held: true };
  const { t, p, q, k, n, r } = match?.kept ?? {};
  const role = r?.means['role'];
  const [each, people, all] = [k, n, t].map((token) => Number(token?.number?.amount ?? Number.NaN));
  if (match === undefined || role === undefined || each === undefined || !(each >= 2 && each <= most)) return undefined;
  const next = tokens[match.end];
  if (match.end < part.end && next?.number?.form !== 'money' && !goesOn.test(next?.text ?? '')) return undefined;
  const kinds = new Set([p, q].flatMap((token) => (token?.means['piece'] as PieceKind | undefined) ?? []));
  const [piece, another] = [...kinds].filter((kind) => kind !== 'unspecified');
  const rough = [k, n, t].some((token) => isRangeOrChoice(token?.number));
  const heads = people !== undefined && !Number.isNaN(people) ? people : all !== undefined ? all / each : Number.NaN;
  if (piece === undefined || another !== undefined || rough) return undefined;
  if (Number.isNaN(heads) || (n === undefined && others.at(tokens, match.end, part.end) !== undefined))
    return { start: match.start, end: match.end, held: true };
  const pieces = heads * each;
  // "24 bouts, 2 each for 10 ushers" is not said twice the same.
  if (!Number.isInteger(heads) || heads < 1 || (t !== undefined && all !== pieces))
    return { start: match.start, end: match.end, held: true };
  const wearers = [{ wearer: nameOf(role, heads), count: heads, piece }];
  return found(reader, match.start, match.end, [
    { fact: 'wearers', wearers },
    { fact: 'pieces', piece, count: pieces },
  ]);
};
