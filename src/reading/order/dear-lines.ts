// Bare prices beside several kinds that no single piece could cost: "10 bouts £140, 5 corsages £250", "$126 for the bouts, $112 for the corsages" are what each line comes to.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import type { Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Line, Matched } from './match-prices.ts';
import type { Price } from './price-at.ts';
import { countOf, lineFacts } from './read-order.ts';

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

// "$70-80" may be for one; of "$70 or $80" either is what the line comes to.
const isSpan = ({ number: { max, or } }: Price): boolean => max !== undefined && or === undefined;

const isDear = (reader: Reader, { mention, price }: Line): boolean => {
  // "@ 180" prices one, whatever it comes to.
  if (price === undefined || price.at || price.per !== 'unsaid' || price.forCount === true || isSpan(price)) return false;
  if (!alike.test(price.number.currency ?? reader.context.currency)) return false;
  const [amount, count] = [Number(price.number.amount), countOf(mention).count];
  const limit = most[mention.kind];
  return count > 1 && amount > limit && amount / count <= limit && amount / count >= 3;
};

// Above this what a line comes to leaves a usual price for each of its pieces (common practice, no source).
const least: Readonly<Record<PieceKind, number>> = {
  buttonhole: 6,
  corsage: 15,
  'wrist corsage': 15,
  'pin corsage': 15,
  'flower crown': 30,
  'hair flower': 6,
  unspecified: 6,
};
// "$126 for the bouts": the words say themselves what it is for.
const namedBehind = (reader: Reader, price: Price | undefined): boolean =>
  price?.piece !== undefined &&
  price.per === 'unsaid' &&
  !isSpan(price) &&
  (price.pieceIndex ?? -1) > price.index &&
  /^(for|on)$/.test(reader.tokens[price.index + 1]?.text ?? '');
const fitsLine = ({ mention, price }: Line): boolean =>
  countOf(mention).count === 1 || Number(price?.number.amount) / countOf(mention).count >= least[mention.kind];

// "2 corsages 2 crowns, $60 for the corsages, $200 for the crowns": either way is a usual price.
const askLines = (reader: Reader, lines: readonly Line[]): Ask => {
  const priced = lines.flatMap(({ price }) => price ?? []);
  const words = reader.words(Math.min(...priced.map(({ start }) => start)), Math.max(...priced.map(({ end }) => end)));
  const choice = (per: 'each' | 'all') => ({
    words: per === 'each' ? 'for each' : 'for all of a kind',
    facts: lineFacts(reader, {
      lines: lines.map((line) => (line.price ? { ...line, price: { ...line.price, per } } : line)),
      spare: [],
    }) as Fact[],
  });
  return { about: 'price', why: 'each or all', words, choices: [choice('each'), choice('all')] };
};

// "$96 for the bouts, $28 each for the corsages": the others say themselves what they are for, or have no price.
const isSure = (reader: Reader, line: Line): boolean => {
  const { price } = line;
  return price === undefined || price.per !== 'unsaid' || (isDear(reader, line) && namedBehind(reader, price));
};
const withNamed = (reader: Reader, matched: Matched): (Matched & { ask?: Ask }) | undefined => {
  const { lines, common } = matched;
  const [only, second] = lines;
  if (only !== undefined && second === undefined && common !== undefined && namedBehind(reader, common))
    return isDear(reader, { mention: only.mention, price: common }) ? { ...matched, common: { ...common, per: 'all' } } : undefined;
  if (lines.length > 1 && lines.some((line) => isDear(reader, line)) && lines.every((line) => isSure(reader, line)))
    return {
      ...matched,
      lines: lines.map((line) => (isDear(reader, line) && line.price ? { ...line, price: { ...line.price, per: 'all' } } : line)),
    };
  if (lines.length < 2 || !lines.every(({ price }) => namedBehind(reader, price))) return undefined;
  const all = (line: Line): Line =>
    line.price && fitsLine(line) ? { ...line, price: { ...line.price, per: 'all' } } : { mention: line.mention };
  // One that can only be its line's says how the others are meant; where that cannot be, they stay open.
  if (lines.some((line) => isDear(reader, line))) return { ...matched, lines: lines.map(all) };
  if (!lines.every(fitsLine) || lines.every(({ mention }) => countOf(mention).count === 1)) return undefined;
  return { ...matched, lines: lines.map(({ mention }) => ({ mention })), ask: askLines(reader, lines) };
};

// "6 bouts = $78, 2 corsages = $50": what so many come to.
const isComesTo = (reader: Reader, { mention, price }: Line): boolean =>
  price !== undefined &&
  price.per === 'unsaid' &&
  price.number.form === 'money' &&
  reader.tokens[price.start - 1]?.text === '=' &&
  mention.end === price.start - 1 &&
  mention.countIndex !== undefined &&
  mention.countIndex < mention.index &&
  Number(price.number.amount) / countOf(mention).count >= 3;

/** Each line's price as the line's own total where it could be for no one piece; a bare price beside such a one is left open. */
export const withDearLines = (reader: Reader, matched: Matched): Matched & { ask?: Ask } => {
  const { lines } = matched;
  if (lines.length > 1 && lines.every((line) => isComesTo(reader, line)))
    return { ...matched, lines: lines.map((line) => (line.price ? { ...line, price: { ...line.price, per: 'all' } } : line)) };
  const named = withNamed(reader, matched);
  if (named !== undefined) return named;
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
