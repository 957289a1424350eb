// Numbers that stand behind their piece in a row of such pairs: "buttonholes 10 corsage 22", ", bouts 14 corsages 32".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere, isCount, isNumber, type Token } from '../text/token.ts';

const pair = pattern('<piece> <plain> (,|and|&|/|\\+|-|;){0,2} <piece> <plain>');
const link = /^(,|and|&|\/|\+|-|;|@|at)$/;
const opens = new Set([',', ':', '-', ';', 'at', '@', '(']);

/** Piece token to number token, for every row of two pairs or more. */
export const nameFirstPairs = (reader: Reader): ReadonlyMap<number, number> => {
  const pairs = new Map<number, number>();
  for (const part of reader.message.parts) {
    for (let start = part.start; start < part.end; start++) {
      if (reader.tokens[start]?.means['piece'] === undefined) continue;
      if (start > part.start && !opens.has(reader.tokens[start - 1]?.text ?? '')) continue;
      const { row, end } = rowAt(reader, start, part.end);
      if (row.size < 2) continue;
      for (const [piece, number] of row) pairs.set(piece, number);
      start = end - 1;
    }
  }
  return pairs;
};

// How many of the kinds in the row are counted again behind it; or ahead of it.
const countedAgain = (reader: Reader, pairs: ReadonlyMap<number, number>, ahead = false): 'all' | 'some' | 'none' => {
  const { tokens } = reader;
  if (pairs.size < 2) return 'none';
  const last = ahead ? -1 : Math.max(...pairs.values());
  const end = ahead ? Math.min(...pairs.keys()) : tokens.length;
  const kinds = [...pairs.keys()].map((index) => tokens[index]?.means['piece']);
  const like = (kind: string, other: string | undefined): boolean => other !== undefined && (kind.includes(other) || other.includes(kind));
  const again = (kind: string | undefined): boolean =>
    kind !== undefined &&
    firstWhere(tokens, last + 1, end, (token, index) => {
      // "2 wrist corsages & a comb. bouts 14, wrists 32, comb 26": whatever stands ahead was ordered there.
      if (ahead) return like(kind, token.means['piece']);
      const at = tokens[index - 1]?.means['material'] === undefined ? index - 1 : index - 2;
      return token.means['piece'] === kind && at > last && isCount(tokens[at]) && reader.free(at);
    }) >= 0;
  if (new Set(kinds).size !== kinds.length || !kinds.some(again)) return 'none';
  return kinds.every(again) ? 'all' : 'some';
};

/** "bouts 15, corsages 32; 12 bouts 3 corsages": where every kind is counted again behind its pair, the pairs are prices. */
export const pairsArePrices = (reader: Reader, pairs: ReadonlyMap<number, number>): boolean => countedAgain(reader, pairs) === 'all';

/** "bouts 15, corsages 32, 12 bouts", "12 bouts, corsages 32, bouts 15": some counted again, and whether the first numbers count or price is not said. */
export const pairsAreOpen = (reader: Reader): boolean => {
  if (!pair.might(reader.tokens)) return false;
  const pairs = nameFirstPairs(reader);
  return countedAgain(reader, pairs) === 'some' || (countedAgain(reader, pairs) === 'none' && countedAgain(reader, pairs, true) === 'some');
};

const rowAt = (reader: Reader, start: number, end: number): { row: Map<number, number>; end: number } => {
  const row = new Map<number, number>();
  let index = start;
  while (index < end) {
    const token = reader.tokens[index];
    if (token === undefined || link.test(token.text)) index += 1;
    else if (
      token.means['piece'] !== undefined &&
      reader.free(index) &&
      isNumber(reader.tokens[index + 1], 'plain') &&
      reader.tokens[index + 2]?.means['ingredient'] === undefined && // "crowns 12 roses"
      reader.free(index + 1)
    ) {
      row.set(index, index + 1);
      index += 2;
    } else break;
  }
  return { row, end: Math.max(index, start + 1) };
};

// "bouts 12 each, crowns 90, combs 30": with one of them a price for each, all are.
const priced = pattern('<piece> (at|@|:|-|are|is)? (<plain> <each>|<money> (<each>)?)');
const row = pattern('<piece> (at|@|:|-|are|is)? <n:amount> (<each>)?');

const between = (token: Token | undefined): boolean =>
  token?.kind === 'line' ||
  link.test(token?.text ?? '') ||
  token?.text === '.' ||
  ['included', 'onTop', 'taxName', 'taxWord', 'material'].some((tag) => token?.means[tag] !== undefined);

/** Whether the message is nothing but names with a number behind each, and one of the numbers is told to be a price. */
export const pricedInRow = ({ tokens }: Reader): boolean => {
  let [kinds, each] = [0, false];
  for (let index = 0; index < tokens.length; ) {
    const match = row.at(tokens, index, tokens.length);
    if (match !== undefined) {
      if (Number(match.kept['n']?.number?.amount) < 4) return false;
      each ||= priced.at(tokens, index, tokens.length) !== undefined;
      kinds += 1;
      index = match.end;
    } else if (between(tokens[index])) index += 1;
    else return false;
  }
  return kinds > 1 && each;
};
