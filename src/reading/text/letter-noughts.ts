// The letter o typed for a nought: "2o bouts", "1oo lapels", "£1o.50". One number, where nothing but figures and that letter stand together.

import { readNumeral } from './numeral.ts';
import { changed, type Token } from './token.ts';

const isFigures = (token: Token | undefined): boolean => token?.kind === 'number' && /^(\d+|\.\d+)$/.test(token.text);
const noughts = new Set(['o', 'oo', 'ooo']);
const isNoughts = (token: Token | undefined): boolean => token?.kind === 'word' && noughts.has(token.text);
const longest = 6; // "door 4o4o4o4" is nobody's count

// Where the number that begins here ends; the same place when it holds no letter.
const endOf = (tokens: readonly Token[], index: number): number => {
  if (tokens[index]?.kind !== 'number' || !/^[1-9]\d*$/.test(tokens[index]?.text ?? '')) return index;
  let end = index + 1;
  let letters = false;
  for (; end < index + longest && tokens[end]?.glued === true; end++) {
    if (isNoughts(tokens[end])) letters = true;
    else if (!letters || !isFigures(tokens[end])) break;
  }
  // "2o'clock", "5oz"
  const next = tokens[end];
  const parted = next === undefined || !next.glued || /^[,.;:)+!?/-]$/.test(next.text);
  // "bay4o" is somebody's code.
  const apart = tokens[index]?.glued !== true || tokens[index - 1]?.kind !== 'word' || /^(x|r|rs)$/.test(tokens[index - 1]?.text ?? '');
  return letters && parted && apart ? end : index;
};

/** The tokens with such numbers as figures alone. */
export const withNoughts = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(isNoughts)) return tokens;
  const written: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const token = tokens[index] as Token;
    const end = endOf(tokens, index);
    if (end === index) {
      written.push(token);
      index += 1;
      continue;
    }
    const figures = tokens
      .slice(index, end)
      .map(({ text }) => text.replaceAll('o', '0'))
      .join('');
    written.push(changed(token, { text: figures, end: (tokens[end - 1] as Token).end, number: readNumeral(figures) }));
    index = end;
  }
  return written;
};
