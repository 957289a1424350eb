// What a piece is built on, closing its own list: in "corsage is 3 spray roses, 2 gyp, 1 wristlet" the wristlet goes in, and nobody orders one.

import { formOf } from '../pattern.ts';
import { meansOf } from './means.ts';
import { isEnd } from './sentence-end.ts';
import { changed, type Token } from './token.ts';

const mounts: Readonly<Record<string, readonly string[]>> = {
  wristlet: ['wrist corsage', 'corsage'],
  bracelet: ['wrist corsage', 'corsage'],
  comb: ['hair flower'],
  'hair comb': ['hair flower'],
  clip: ['hair flower'],
  'hair clip': ['hair flower'],
  'hair slide': ['hair flower'],
  headband: ['flower crown', 'hair flower'],
};
const mountWords = new Set(Object.keys(mounts).flatMap((one) => [one, `${one}s`]));
const counted = formOf(
  '(<count>|a|an|half a|half) (x)? (stem|stems|sprig|sprigs|bit|bits|heads|head)? (of)? (<material>)? (<unlisted>)? <ingredient>',
);
const closes = /^(,|and|&|\+|plus|;|\)|each|per|with|then)$/;
const leads = /^(,|and|&|\+|plus|on|with|1|a|an|one|the)$/;

/** Whether flowers are counted out for a piece of this kind between its name and here. */
const listedFor = (tokens: readonly Token[], index: number, kinds: readonly string[]): boolean => {
  for (let at = index - 1, flowers = false; at >= 0 && !isEnd(tokens, at); at--) {
    if (counted.at(tokens, at) !== undefined) flowers = true;
    const piece = tokens[at]?.means['piece'];
    if (piece !== undefined) return flowers && kinds.includes(piece);
  }
  return false;
};

/** The tokens with such a mount as goods of its own. */
export const mountsAsGoods = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => mountWords.has(text))) return tokens;
  return tokens.map((token, index) => {
    if (!mountWords.has(token.text)) return token;
    const one = token.text.replace(/s$/, '');
    const kinds = mounts[one] ?? [];
    const [before, next] = [tokens[index - 1], tokens[index + 1]];
    const led = leads.test(before?.text ?? '') || (before?.kind === 'word' && leads.test(tokens[index - 2]?.text ?? '')); // "1 pearl wristlet"
    const ended = next === undefined || next.kind === 'line' || closes.test(next.text) || isEnd(tokens, index + 1);
    return led && ended && listedFor(tokens, index, kinds) ? changed(token, { means: meansOf({ ingredient: one }) }) : token;
  });
};
