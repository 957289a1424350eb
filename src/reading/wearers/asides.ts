// What is said of a wearer in passing: "(combs)", "(magnet please)", "page boy, no pins".

import { tellsOfHealth } from '../../handbook/hazard-words.ts';
import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere, isCount, type Token } from '../text/token.ts';

// "(combs)" is what they wear, "(magnet please)" a note; an implant or allergy is read as a care of its own.
export const asideOf = (reader: Reader, start: number, end: number): { piece?: PieceKind; note?: string } => {
  const open = firstWhere(reader.tokens, start, end, (token) => token.text === '(');
  if (open < 0) return {};
  const inside = reader.tokens.slice(open + 1, end - 1).filter((token) => token.text !== ')');
  const piece = inside.find((token) => token.means['piece'] !== undefined)?.means['piece'] as PieceKind | undefined;
  if (piece !== undefined && piece !== 'unspecified') return { piece };
  const close = firstWhere(reader.tokens, open + 1, reader.tokens.length, (token) => token.text === ')');
  const note = reader.words(open + 1, close < 0 ? end : close);
  return inside.length === 0 || inside.some((token) => token.number !== undefined) || tellsOfHealth(note) ? {} : { note };
};
/** "ushers (4)" */
export const countInside = (reader: Reader, { start, end }: Match): Token | undefined => {
  const open = firstWhere(reader.tokens, start, end, (token) => token.text === '(');
  const [number, close] = [reader.tokens[open + 1], reader.tokens[open + 2]];
  return open >= 0 && isCount(number) && close?.text === ')' && /(s|men)$/.test(reader.tokens[open - 1]?.text ?? '') ? number : undefined;
};

// "page boy, no pins": what is asked for the one just named.
const remark = pattern(
  "(,|-) (no|not|without|can't|cant|prefers|uses|in a|left - handed|left handed|magnet|magnets|pin|pins|tiny|extra small|small one) (<filler>){0,4}",
);
const noneOf = /^(no|not|without|the|any|his|her|our|their|for)$/;
export const remarkAt = (reader: Reader, index: number, end: number): { words: string; end: number } | undefined => {
  const match = remark.at(reader.tokens, index, end);
  // "not counting the maid of honour", "nothing for the dads": who wears none.
  if (match === undefined || /^(counting|including|incl|for)$/.test(reader.tokens[index + 2]?.text ?? '')) return undefined;
  let to = index + 1;
  while (to < match.end && !/^(,|and|&|\+|;)$/.test(reader.tokens[to]?.text ?? '') && reader.tokens[to]?.means['role'] === undefined)
    to += 1;
  // "groom, 3 ushers, not the dads": they wear none.
  const naming =
    reader.tokens[to]?.means['role'] !== undefined && reader.tokens.slice(index + 1, to).every(({ text }) => noneOf.test(text));
  if (naming) return undefined;
  const words = reader.words(index + 1, to);
  return to - index < 3 || tellsOfHealth(words) ? undefined : { words, end: to };
};
