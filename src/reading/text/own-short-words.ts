// Short words a price list explains itself: "bu = bunch, bx = box of 100" at its head, and "bu 10 ... 13.50" below.

import { packWords } from '../words/trade-words.ts';
import { isKnownWord } from '../words/vocabulary.ts';
import { changed, type Token } from './token.ts';

const packs: ReadonlyMap<string, string> = new Map(
  Object.entries(packWords).flatMap(([one, names]) => [one, ...names].map((name) => [name, one] as const)),
);
const says = /^(=|means)$/;
const lone = /^[bcdefhjlnqstuvwyz]$/; // the other letters stand for rand, metres, pence and times
const longest = 4; // letters

interface Meant {
  readonly short: string;
  readonly pack: string;
  readonly sized: readonly Token[]; // "of 100"
}

const explained = (tokens: readonly Token[], index: number): Meant | undefined => {
  if (!says.test(tokens[index]?.text ?? '')) return undefined;
  const [short, long, of, size] = [tokens[index - 1], tokens[index + 1], tokens[index + 2], tokens[index + 3]];
  const pack = packs.get(long?.text ?? '');
  if (short?.kind !== 'word' || short.text.length > longest || pack === undefined) return undefined;
  if (isKnownWord(short.text) && !lone.test(short.text) && !packs.has(short.text)) return undefined;
  const sizes = [size, tokens[index + 4], tokens[index + 5]];
  const open = sizes[0]?.number?.max !== undefined || sizes[0]?.number?.or !== undefined;
  // "box of 100-102": which of the two is not said.
  if (open || (/^(-|or|to|\/)$/.test(sizes[1]?.text ?? '') && sizes[2]?.number !== undefined)) return undefined;
  const sized = of?.text === 'of' && size?.number?.form === 'plain';
  return { short: short.text, pack, sized: sized ? [of, size] : [] };
};

/** The tokens with such words written out, all below where they are explained. One letter alone is meant only before a number. */
export const withOwnShortWords = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => says.test(text))) return tokens;
  const known = new Map<string, Meant>();
  return tokens.flatMap((token, index) => {
    const next = explained(tokens, index + 1);
    if (next !== undefined) known.set(next.short, next);
    const meant = next === undefined ? known.get(token.text) : undefined;
    if (meant === undefined || (token.text.length === 1 && tokens[index + 1]?.number === undefined)) return [token];
    const { start, end } = token;
    return [changed(token, { text: meant.pack }), ...meant.sized.map((each) => changed(each, { start, end, glued: false }))];
  });
};
