// "pins 50 box 6", "elastics 10 pack 4", "magnets box of 20 14": two bare numbers round a box, of which one is what it holds and the other its price.

import { type Match, pattern } from '../pattern.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import type { Token } from '../text/token.ts';

export interface Boxed {
  readonly start: number; // of the words that tell the size
  readonly size: number;
  readonly per: string;
  readonly price: number; // the place of the price
}

const sizeFirst = pattern('<n:count> (-)? <k:pack> (,|-|at|@|for|is|:|=)? <p:amount>');
const boxFirst = pattern('<k:pack> (of|/|x) <n:count> (,|-|at|@|for|is|:|=)? <p:amount>');
const bareBox = pattern('<k:pack> <n:count> <p:amount>');
const holds = /^(box|pack|packet|bag|card|jar)$/;
const closes = (token: Token | undefined): boolean =>
  token === undefined ||
  token.kind === 'line' ||
  tellsOfTax(token) ||
  /^(,|;|\.|\(|\+|and|&|plus|inc|ex|ea|each|now|from)$/.test(token.text);

const fitted = (tokens: readonly Token[], match: Match | undefined, first: boolean): Boxed | undefined => {
  const { n, k, p } = match?.kept ?? {};
  if (match === undefined || n === undefined || k === undefined || p === undefined) return undefined;
  const per = k.means['pack'] ?? '';
  const [size, price] = [Number(n.number?.amount), Number(p.number?.amount)];
  if (p.number?.form !== 'plain' || size < 2 || n.number?.max !== undefined || p.number?.max !== undefined || !closes(tokens[match.end]))
    return undefined;
  // "pins 6 box 50": six for a box of fifty.
  if (first && (!holds.test(per) || /s$/.test(k.text) || (per === 'box' && size < price))) return undefined;
  return { start: match.start, size, per, price: match.end - 1 };
};

/** What the words here say of a box, right behind the name of what is in it. */
export const boxedAt = (tokens: readonly Token[], index: number): Boxed | undefined => {
  const before = tokens[index - 1];
  if (before === undefined || (before.means['ingredient'] === undefined && !/^(a|an|per|-|:|,)$/.test(before.text))) return undefined;
  const end = tokens.length;
  if (before.means['ingredient'] !== undefined) {
    const sized = fitted(tokens, sizeFirst.at(tokens, index, end), true) ?? fitted(tokens, bareBox.at(tokens, index, end), false);
    if (sized !== undefined) return sized;
  }
  return fitted(tokens, boxFirst.at(tokens, index, end), false);
};
