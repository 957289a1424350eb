// The trade name of what goes in or is bought, in the singular: "2 bits of gyp" is gypsophila, "white roses" white rose.

import type { Token } from '../text/token.ts';
import { portionWords } from '../words/trade-words.ts';
import { dropAfter, dropBefore } from './name-edges.ts';

export const singular = (word: string): string => {
  if (/leaves$/.test(word)) return word.replace(/leaves$/, 'leaf');
  if (/[^aeiou]ies$/.test(word) && word.length > 4) return `${word.slice(0, -3)}y`;
  if (/(ss|us|is|os|mas|pampas|canvas)$/.test(word) || word.length < 4) return word;
  if (/(x|ch|sh|ss)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith('s') ? word.slice(0, -1) : word;
};

const nameOf = (token: Token, last: boolean): string => token.means['ingredient'] ?? (last ? singular(token.text) : token.text);

/** Whether any of these words is a known flower, foliage or sundry. */
export const knowsItem = (tokens: readonly Token[], items: readonly string[]): boolean => {
  const own = itemWords(items);
  return tokens.some(
    (token) =>
      token.means['ingredient'] !== undefined ||
      (own.size > 0 && token.kind === 'word' && token.text.length > 3 && own.has(singular(token.text))),
  );
};

// The words of the studio's price list, once per list.
const wordsOf = new WeakMap<readonly string[], ReadonlySet<string>>();
const itemWords = (items: readonly string[]): ReadonlySet<string> => {
  const known = wordsOf.get(items) ?? new Set(items.flatMap((item) => item.toLowerCase().split(' ').map(singular)));
  wordsOf.set(items, known);
  return known;
};

const takingBack = /^(instead|rather|place|hang|soz|oops|whoops|sorry|meant|correction|mistake|typo|typed|told|wait|actually)$/;

const nowhere = /^(on|at|to)$/; // "8 on pins" is money

/** The singular trade name these words give; undefined when no name is left. `keepPieceWords`: "corsage pins" are goods. */
export const itemName = (given: readonly Token[], dropMaterial: boolean): string | undefined => {
  let tokens = given.filter((token) => token.kind === 'word' || token.text === '-' || (token.kind === 'sign' && token.text === "'"));
  // "€14 in total instead of 19" names no goods.
  if (tokens.some((token) => takingBack.test(token.text)) && tokens.every((token) => token.means['ingredient'] === undefined))
    return undefined;
  if (dropMaterial && tokens.length > 1) tokens = tokens.filter((token) => token.means['material'] === undefined);
  while (
    tokens.length > 1 &&
    (dropBefore.has(tokens[0]?.text ?? '') || (portionWords.has(tokens[0]?.text ?? '') && tokens[0]?.means['ingredient'] === undefined))
  )
    tokens = tokens.slice(1);
  while (tokens.length > 0 && dropAfter.has(tokens.at(-1)?.text ?? '')) tokens = tokens.slice(0, -1);
  while (tokens.length > 0 && dropBefore.has(tokens[0]?.text ?? '')) tokens = tokens.slice(1);
  // "a leaf of ruscus" is a ruscus leaf.
  const [first, ...behind] = tokens;
  const rest = behind[0]?.text === 'of' ? behind.slice(1) : behind;
  if (first?.means['ingredient'] === 'leaf' && rest[0]?.means['ingredient'] !== undefined) tokens = [...rest, first];
  if (tokens.some((token) => token.means['all'] !== undefined)) return undefined; // "14 stems in all"
  if (tokens.length === 0 || tokens.length > 5 || nowhere.test(tokens[0]?.text ?? '')) return undefined;
  const words = tokens
    .map((token, index) => nameOf(token, index === tokens.length - 1))
    .join(' ')
    .replace(/ - /g, '-');
  return words.replace(/^(pearl head|pearl-head) pin$/, 'pearl head pin');
};
