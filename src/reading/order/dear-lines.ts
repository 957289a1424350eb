// Bare prices beside several kinds that no single piece could cost: "10 bouts £140, 5 corsages £250" are what each line comes to.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader } from '../phrase.ts';
import type { Line, Matched } from './match-prices.ts';
import { countOf } from './read-order.ts';

// Above this one piece is out of all proportion, in a currency like the pound (common practice, no source).
const most: Readonly<Record<PieceKind, number>> = {
  buttonhole: 60,
  corsage: 90,
  'wrist corsage': 90,
  'pin corsage': 90,
  'flower crown': 250,
  'hair flower': 90,
  unspecified: 150,
};
const alike = /^(GBP|EUR|USD|AUD|NZD|CAD)$/;

const isDear = (reader: Reader, { mention, price }: Line): boolean => {
  // "@ 180" prices one, whatever it comes to.
  if (price === undefined || price.at || price.per !== 'unsaid' || price.forCount === true || price.number.max !== undefined) return false;
  if (!alike.test(price.number.currency ?? reader.context.currency)) return false;
  const [amount, count] = [Number(price.number.amount), countOf(mention).count];
  const limit = most[mention.kind];
  return count > 1 && amount > limit && amount / count <= limit && amount / count >= 3;
};

/** Each line's price as the line's own total where it could be for no one piece; a bare price beside such a one is left open. */
export const withDearLines = (reader: Reader, matched: Matched): Matched => {
  const { lines } = matched;
  // "150 and 60 each" in a row behind the kinds
  const next = (at: number): number => lines[at + 1]?.mention.start ?? Number.MAX_SAFE_INTEGER;
  if (lines.some(({ price }, at) => price !== undefined && price.index > next(at))) return matched;
  if (lines.length < 2 || !lines.some((line) => isDear(reader, line))) return matched;
  const told = (line: Line): Line => {
    if (line.price === undefined) return line;
    if (isDear(reader, line)) return { ...line, price: { ...line.price, per: 'all' } };
    return line.price.per === 'unsaid' && countOf(line.mention).count > 1 ? { mention: line.mention } : line;
  };
  return { ...matched, lines: lines.map(told) };
};
