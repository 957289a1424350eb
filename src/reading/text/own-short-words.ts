// Short words a price list explains itself: "bu = bunch, bx = box" at its head, and "bu 10 ... 13.50" below.

import { packWords } from '../words/trade-words.ts';
import { isKnownWord } from '../words/vocabulary.ts';
import { changed, type Token } from './token.ts';

const packs: ReadonlyMap<string, string> = new Map(
  Object.entries(packWords).flatMap(([one, names]) => [one, ...names].map((name) => [name, one] as const)),
);
const says = /^(=|means)$/;
const explained = (tokens: readonly Token[], index: number): readonly [string, string] | undefined => {
  const [short, long] = [tokens[index - 1], tokens[index + 1]];
  const pack = packs.get(long?.text ?? '');
  if (short?.kind !== 'word' || short.text.length > 4 || pack === undefined || isKnownWord(short.text)) return undefined;
  // "bu = bunch of 10" fixes their size too, which the short word alone does not say.
  if (tokens[index + 2]?.number !== undefined || tokens[index + 3]?.number !== undefined) return undefined;
  return [short.text, pack];
};

/** The tokens with such words written out, all through the message. */
export const withOwnShortWords = (tokens: readonly Token[]): readonly Token[] => {
  const known = new Map(tokens.flatMap(({ text }, index) => (says.test(text) ? [explained(tokens, index) ?? []] : [])).filter(isPair));
  return known.size === 0 ? tokens : tokens.map((token) => (known.has(token.text) ? changed(token, { text: known.get(token.text) ?? '' }) : token));
};
const isPair = (each: readonly string[]): each is readonly [string, string] => each.length === 2;
