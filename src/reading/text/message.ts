// A message ready for the phrases: its tokens, the parts it falls into, and what earlier phrases have already taken.

import { type CleanText, cleanText, ownWords } from './clean-text.ts';
import { lex } from './lex.ts';
import { nameWords } from './name-words.ts';
import { joinRanges } from './number-ranges.ts';
import { joinUnits } from './number-units.ts';
import { joinNumberWords } from './number-words.ts';
import type { Token } from './token.ts';

/** A sentence or a line: tokens from `start` up to `end`. */
export interface Part {
  readonly start: number;
  readonly end: number;
  readonly asked: boolean; // ends with a question mark
}

export interface Message {
  readonly clean: CleanText;
  readonly tokens: readonly Token[];
  readonly parts: readonly Part[];
  /** The person's own words for a stretch of tokens. */
  words(start: number, end: number): string;
}

const listNumber = (tokens: readonly Token[], index: number): boolean => {
  const [token, mark] = [tokens[index], tokens[index + 1]];
  const lineStart = index === 0 || tokens[index - 1]?.kind === 'line';
  return (
    lineStart &&
    token?.number?.form === 'plain' &&
    /^\d{1,2}$/.test(token.text) &&
    (mark?.text === ')' || mark?.text === '.') &&
    mark.glued &&
    tokens[index + 2]?.glued === false
  );
};

// "1. … \n 2. …": the numbers of a list are nobody's count. Bullets likewise.
const withoutListMarks = (tokens: readonly Token[]): Token[] => {
  const marks = tokens.filter((_, index) => listNumber(tokens, index)).length;
  return tokens.filter((token, index) => {
    const lineStart = index === 0 || tokens[index - 1]?.kind === 'line';
    if (marks >= 2 && (listNumber(tokens, index) || (index > 0 && listNumber(tokens, index - 1)))) return false;
    return !(lineStart && (token.text === '-' || token.text === '*' || token.text === '>') && tokens[index + 1]?.glued === false);
  });
};

const isEnd = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index] as Token;
  if (token.kind === 'line' || token.text === ';' || token.text === '?' || token.text === '!') return true;
  return token.text === '.' && tokens[index + 1]?.glued !== true;
};

const partsOf = (tokens: readonly Token[]): Part[] => {
  const parts: Part[] = [];
  let start = 0;
  for (let index = 0; index < tokens.length; index++) {
    if (!isEnd(tokens, index)) continue;
    if (index > start) parts.push({ start, end: index, asked: tokens[index]?.text === '?' });
    start = index + 1;
  }
  if (start < tokens.length) parts.push({ start, end: tokens.length, asked: false });
  return parts;
};

export const readTokens = (clean: CleanText): Token[] =>
  nameWords(joinRanges(joinUnits(joinNumberWords(withoutListMarks(lex(clean.text))))));

export const openMessage = (text: string): Message => {
  const clean = cleanText(text);
  const tokens = readTokens(clean);
  return {
    clean,
    tokens,
    parts: partsOf(tokens),
    words: (start, end) => {
      const [first, last] = [tokens[start], tokens[end - 1]];
      return first === undefined || last === undefined ? '' : ownWords(clean, first.start, last.end);
    },
  };
};
