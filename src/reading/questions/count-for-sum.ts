// "can i do 20 for 13", "what if 30 bouts for 400 all in": another number of them and another price, of which the second is not lost.

import { pattern } from '../pattern.ts';
import { isSingle, type Token } from '../text/token.ts';

const form = pattern(
  '<n:plain> (<material>)? (<piece>|of them|of those|pieces)? for (about|around|only|just|say|like)? <a:amount> (<all>|<each>)?',
);
// What the second number may stand before and still be money: nothing, or a word that asks.
const closes = pattern('(,|-|work|do|ok|okay|instead|please|pls|then|be|or|and|fit|cover|still|make|pay|now|if|is|would)');

export interface CountForSum {
  readonly number: number;
  readonly amount: string;
  readonly per?: 'all';
}

/** Both numbers, where one of the pieces and one of money are all that is tried. Whether the money is for each is told by the order. */
export const countForSum = (tokens: readonly Token[], start: number, end: number): CountForSum | undefined => {
  const match = form.in(tokens, start, end);
  const [count, amount] = [match?.kept['n']?.number, match?.kept['a']?.number];
  if (match === undefined || !isSingle(count) || !isSingle(amount) || !/^\d+$/.test(count.amount)) return undefined;
  if (tokens.slice(start, match.start).some(({ number }) => number !== undefined)) return undefined;
  const last = tokens[match.end - 1];
  const open = amount.form === 'plain' && last?.means['all'] === undefined && last?.means['each'] === undefined;
  if (open && match.end < end && closes.at(tokens, match.end, end) === undefined) return undefined;
  return { number: Number(count.amount), amount: amount.amount, ...(last?.means['all'] === undefined ? {} : { per: 'all' as const }) };
};
