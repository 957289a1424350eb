// "wax £9/10, ribbon £4 for 25m": a stroke behind a price parts it from how many it buys, and is no date.

import { codesBefore, signs } from '../words/currency-words.ts';
import { cut, type Token } from './token.ts';

const form = /^(\d{1,4})\/(\d{1,3})$/;

/** The tokens with such a price, its stroke and its number each by itself. */
export const splitPricedStrokes = (tokens: readonly Token[]): readonly Token[] => {
  let strokes = 0;
  for (const { number } of tokens) if (number?.form === 'slashed') strokes += 1;
  // One alone is read whole, by the price and the size together.
  if (strokes === 0 || tokens.length - strokes < 3) return tokens;
  return tokens.flatMap((token, index) => (token.number?.form === 'slashed' ? split(token, tokens[index - 1]?.text ?? '') : token));
};

const split = (token: Token, sign: string): Token | readonly Token[] => {
  const parts = form.exec(token.text);
  if (parts === null || !(Object.hasOwn(signs, sign) || Object.hasOwn(codesBefore, sign) || sign === '$')) return token;
  const [price = '', size = ''] = [parts[1], parts[2]];
  if (Number(size) < 2) return token;
  const at = token.start + price.length;
  const number = (amount: string, start: number, end: number, glued: boolean): Token =>
    cut({ kind: 'number', text: amount, start, end, glued, number: { form: 'plain', amount } });
  return [
    number(price, token.start, at, token.glued),
    cut({ kind: 'sign', text: '/', start: at, end: at + 1, glued: true }),
    number(size, at + 1, token.end, true),
  ];
};
