// Prices of twelve: "Rs 1,200 per doz", "$132 a dozen for bouts". Each is what one costs, where twelve divide it to the penny.

import { decimal } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import type { NumberRead, Token } from '../text/token.ts';

const perDozen = pattern('(per|a|/|the)? <d:plain>');
const aDozen = /^(a|an|per) (doz|dozen|dz|dzn)$/; // "a dozen" is read as one number
const leastOfDozen = 3; // below it hardly any piece is sold: common practice, no source

/** What one of twelve costs and where that ends; 'open' where the words say twelve and the price of one does not follow. */
export const dozenBehind = (
  tokens: readonly Token[],
  number: NumberRead,
  end: number,
): { number: NumberRead; end: number } | 'open' | undefined => {
  const match = perDozen.at(tokens, end, tokens.length);
  const dozen = match?.kept['d'];
  if (match === undefined || dozen?.number?.inDozens !== true) return undefined;
  const whole = match.end === end + 1;
  // "$18 a dozen bouts" counts them.
  if (whole && (!aDozen.test(dozen.text) || tokens[match.end]?.means['piece'] !== undefined)) return undefined;
  const one = decimal(number.amount).dividedBy(12);
  // "bouts at $12, a dozen" may count them.
  if ((whole && one.lt(leastOfDozen)) || one.decimalPlaces() > 2 || number.max !== undefined) return 'open';
  return { number: { ...number, amount: one.toFixed() }, end: match.end };
};
