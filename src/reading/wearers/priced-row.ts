// One line of an order pasted from a client's mail: who, how many, what they wear and its price, "Bridesmaids x 4 - wrist corsage 32 each".

import type { PieceKind } from '../../handbook/pieces.ts';
import { couldBePrice } from '../changes/now-count-or-price.ts';
import { firstAt, pattern } from '../pattern.ts';
import { allFree, type Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { isCount, isSingle, type NumberRead } from '../text/token.ts';
import { countFor, nameOf } from './role-counts.ts';

export interface PricedRow {
  readonly start: number;
  readonly end: number;
  readonly wearer: string;
  readonly count: number;
  readonly piece: PieceKind;
  readonly number: NumberRead;
  /** What the number is of, where the line itself tells: 'open' where it could be of one or of all in the line. */
  readonly per: 'each' | 'line' | 'open';
}

const bullet = '(-|*|·|•|–)?';
const gap = '(-|:|,|=|–|\\|){0,2}';
const who = '(<w:role>|<w:owner>)';
const what = '(<c:count>)? (x)? (a|an|one)? (<material>)? <p:piece> (each)?';
const cost = '(@|at|for|-|:|,|=|–|\\|){0,2} <a:amount> (<e:each>)?';
const forms = [
  pattern(`${bullet} (the|our)? ${who} (\\(|x|:|-|,){0,2} <n:count> (\\))? ${gap} ${what} ${cost}`),
  pattern(`${bullet} (the|our)? (<n:count>)? (x)? (the|our)? ${who} ${gap} ${what} ${cost}`),
];
const leastPrice = 4;

/** How many a line is of: said with the people or with the pieces, the same where both are said. */
const countOf = (people: NumberRead | undefined, pieces: NumberRead | undefined, role: string): number | undefined => {
  const said = [people, pieces].flatMap((number) => (number === undefined ? [] : [Number(number.amount)]));
  if (said.length === 2 && said[0] !== said[1]) return undefined;
  return said[0] ?? countFor(role, undefined, false);
};

/** The line as such a row; undefined where anything else stands in it, or how many they are is not said. */
export const pricedRow = (reader: Reader, { start, end }: Stretch): PricedRow | undefined => {
  const { tokens } = reader;
  const match = firstAt(forms, tokens, start, end);
  const { w, n, c, p, a, e } = match?.kept ?? {};
  const [number, piece] = [a?.number, p?.means['piece'] as PieceKind | undefined];
  if (match?.end !== end || w === undefined || number === undefined || piece === undefined || piece === 'unspecified') return undefined;
  if (!allFree(reader, start, end) || !isSingle(number) || Number(number.amount) < leastPrice) return undefined;
  if ([n, c].some((token) => token !== undefined && (!isCount(token) || !isSingle(token.number)))) return undefined;
  const role = w.means['role'] ?? w.means['owner'] ?? '';
  const count = w.means['owner'] !== undefined && n === undefined && c === undefined ? 1 : countOf(n?.number, c?.number, w.text);
  if (role === 'rest' || count === undefined || count < 1) return undefined;
  return { start, end, wearer: nameOf(role, count), count, piece, number, per: perOf(number, piece, count, e !== undefined) };
};

const perOf = (number: NumberRead, piece: PieceKind, count: number, marked: boolean): PricedRow['per'] => {
  if (marked || count === 1) return 'each';
  const amount = Number(number.amount);
  const [one, all] = [couldBePrice(piece, amount), couldBePrice(piece, amount / count)];
  return one === all ? 'open' : one ? 'each' : 'line';
};
