// "45 per comb, 110 the crown": a number before "the" and one piece is its price, where "12 the bouts" counts.

import { type Match, pattern } from '../pattern.ts';
import { isCount, type Token } from '../text/token.ts';

const several = /([^s]s|es|'s)$/;

/** Whether the number here prices the one piece named behind it. */
export const pricesTheOne = (tokens: readonly Token[], index: number): boolean => {
  const [token, the, piece] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  if (token?.number === undefined || the?.text !== 'the' || piece?.means['piece'] === undefined || several.test(piece.text)) return false;
  return token.number.form === 'money' || Number(token.number.amount) > 1;
};

/** "bouts 14 / corsages 35": the stroke parts the lines of a list. */
export const listsKinds = (tokens: readonly Token[], end: number): boolean =>
  tokens[end]?.text === '/' && tokens[end]?.glued !== true && /s$/.test(tokens[end + 1]?.text ?? '');

const perPiece = pattern('(/|per|a|an|for a|for an|each|the) <piece:piece>');
/** "a bout", "per comb", "the crown" behind the price at `index`. */
export const perPieceBehind = (tokens: readonly Token[], index: number, from: number): Match | undefined =>
  tokens[from]?.text === 'the' && !(from === index + 1 && pricesTheOne(tokens, index))
    ? undefined
    : perPiece.at(tokens, from, tokens.length);

const countsPriced = pattern('(a|an|per|each|/) <piece> for');
/** "up to 15 a bout for 12" counts them. */
export const countsThePriced = (tokens: readonly Token[], index: number): boolean =>
  isCount(tokens[index]) && countsPriced.at(tokens, index - 3, index) !== undefined;
