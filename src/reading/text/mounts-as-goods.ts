// What a piece is built on, closing its own list: in "corsage is 3 spray roses, 2 gyp, 1 wristlet" the wristlet goes in, and nobody orders one.
// On a price list it is sold by the pack: "Wristlets, elastic, pack of 12, 15.60".

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

// "1 wristlet" on a line of its own, in a card with a line for each stem below the name of the piece.
const ownLine = (tokens: readonly Token[], index: number): boolean => {
  const next = tokens[index + 1];
  const from = tokens[index - 1]?.kind === 'line' ? index : index - 1;
  return (next === undefined || next.kind === 'line') && tokens[from - 1]?.kind === 'line' && from > 1;
};
const opensLine = (tokens: readonly Token[], index: number): boolean => index === 0 || tokens[index - 1]?.kind === 'line';

/** Whether flowers are counted out for a piece of this kind between its name and here. */
const listedFor = (tokens: readonly Token[], index: number, kinds: readonly string[]): boolean => {
  const lined = ownLine(tokens, index);
  for (let at = index - 1, flowers = false; at >= 0 && (!isEnd(tokens, at) || (lined && tokens[at]?.kind === 'line')); at--) {
    if (counted.at(tokens, at) !== undefined) flowers = true;
    const piece = tokens[at]?.means['piece'];
    if (piece !== undefined) return flowers && kinds.includes(piece) && (!lined || opensLine(tokens, at));
  }
  return false;
};

const byThePack = formOf('<any> (,)? (<word>)? (,|-|:)? ((a|per)? <pack> (of|x|/) <count>|<count> (-)? <pack>) (,|-|:|@|at|for)? <amount>');
const isSold = (tokens: readonly Token[], index: number): boolean =>
  opensLine(tokens, index) && byThePack.at(tokens, index, tokens.length) !== undefined;

/** The tokens with such a mount as goods of its own. */
export const mountsAsGoods = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => mountWords.has(text))) return tokens;
  return tokens.map((token, index) => {
    if (!mountWords.has(token.text)) return token;
    const one = token.text.replace(/s$/, '');
    const kinds = mounts[one] ?? [];
    if (isSold(tokens, index)) return changed(token, { means: meansOf({ ingredient: one }) });
    const [before, next] = [tokens[index - 1], tokens[index + 1]];
    const led = leads.test(before?.text ?? '') || (before?.kind === 'word' && leads.test(tokens[index - 2]?.text ?? '')); // "1 pearl wristlet"
    const ended = next === undefined || next.kind === 'line' || closes.test(next.text) || isEnd(tokens, index + 1);
    return led && ended && listedFor(tokens, index, kinds) ? changed(token, { means: meansOf({ ingredient: one }) }) : token;
  });
};
