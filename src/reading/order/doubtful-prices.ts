// Prices that cannot stand, or could be the count as well: "at -5", "at 1e30", "40 at 25 bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import { problem } from '../../values/result.ts';
import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import { doubtfulCount } from './doubtful-counts.ts';
import { pairsAreOpen } from './name-first.ts';

const belowZero = pattern('(at|@) - <n:amount>');
const powerOfTen = pattern('(at|@) <number> e <number>');

// "wristlets $18 box of 12": what a box of them costs, and no price of one.
const ofBox = pattern(
  '<piece> (,|-|:|at|@)? <money> (a|per|for|/|,|-)? (box|boxes|pack|packs|packet|pkt|bag|card|carton) (of|x|/) <count>',
);
/** Held from the kind to what the box holds. */
export const priceOfBox = ({ tokens }: Reader): Finding | undefined => {
  const match = ofBox.in(tokens, 0, tokens.length);
  return match === undefined ? undefined : { start: match.start, end: match.end, held: true };
};

/** The message is refused with one sentence; nothing of it is stored. */
export const impossiblePrice = (reader: Reader): Finding | undefined => {
  const below = belowZero.in(reader.tokens, 0, reader.tokens.length);
  const sum = below?.kept['n'];
  if (below !== undefined && sum?.number !== undefined && sum.glued === true && reader.free(below.start)) {
    return { start: below.start, end: below.end, problems: [problem('price-not-positive', { amount: `-${sum.number.amount}` })] };
  }
  const power = powerOfTen.in(reader.tokens, 0, reader.tokens.length);
  if (power === undefined || !gluedFrom(reader, power.start + 2, power.end) || !reader.free(power.start)) return undefined;
  return {
    start: power.start,
    end: power.end,
    takes: [power.start], // the figures were set aside already, as nobody's
    problems: [problem('price-too-large', { amount: reader.words(power.start + 1, power.end) })],
  };
};

const gluedFrom = (reader: Reader, start: number, end: number): boolean => reader.tokens.slice(start, end).every((token) => token.glued);

const either = pattern('<a:plain> (at|@) <b:plain> <p:piece>');
const isWhole = (amount: string | undefined): amount is string => amount !== undefined && /^[1-9]\d{0,4}$/.test(amount);

/** "40 at 25 bouts": forty at 25 each, or 25 of them at 40. */
export const countOrPrice = (reader: Reader): Finding | undefined => doubtfulCount(reader) ?? eitherWay(reader) ?? openPairs(reader);

const openPairs = (reader: Reader): Finding | undefined =>
  pairsAreOpen(reader) ? { start: 0, end: reader.tokens.length, held: true } : undefined;

const eitherWay = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = either.in(tokens, 0, tokens.length);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const [one, other] = [match?.kept['a']?.number?.amount, match?.kept['b']?.number?.amount];
  if (match === undefined || piece === undefined || !isWhole(one) || !isWhole(other) || !reader.free(match.start)) return undefined;
  if (tokens[match.start - 1] !== undefined || tokens.some((token, at) => at !== match.end - 1 && token.means['piece'] !== undefined))
    return undefined;
  const words = reader.words(match.start, match.end);
  const choice = (count: string, amount: string) => ({
    words: `${count} at ${amount} each`,
    facts: [
      { fact: 'pieces', piece, count: Number(count), words },
      { fact: 'price', amount, per: 'each', words },
    ] satisfies Fact[],
  });
  return {
    start: match.start,
    end: match.end,
    asks: [{ about: 'count', why: 'which number', words, choices: [choice(one, other), choice(other, one)] }],
  };
};
