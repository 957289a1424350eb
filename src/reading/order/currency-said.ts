// A currency said apart from every number: "4 wrist corsages @ 24, 9 bouts @ 10.50, euro, vat incl", "12 bouts at 14, all in euros".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { codesAfter } from '../words/currency-words.ts';
import type { Price } from './price-at.ts';

const apart = pattern(
  "(,|-|\\(|;|:|\\.) (<all>|all|prices|everything|that's|thats|it's|its|they're|both)? (in|are)? (in)? <c:word> (\\))?",
);
const ends = /^([,;.)(+&-]|and|plus|inc|incl|ex|please|pls|thanks)$/;

/** The prices in the currency that is said once, where none of them names its own. */
export const withCurrencySaid = ({ tokens }: Reader, prices: readonly Price[]): Price[] => {
  if (prices.length === 0 || prices.some(({ number }) => number.currency !== undefined || number.symbol !== undefined)) return [...prices];
  for (let index = Math.min(...prices.map((price) => price.index)) + 1; index < tokens.length; index++) {
    const match = apart.at(tokens, index, tokens.length);
    const word = match?.kept['c']?.text ?? '';
    const currency = Object.hasOwn(codesAfter, word) ? codesAfter[word] : undefined;
    const next = tokens[match?.end ?? index];
    const closes = next === undefined || next.kind === 'line' || ends.test(next.text) || next.means['taxName'] !== undefined;
    if (currency !== undefined && closes) return prices.map((price) => ({ ...price, number: { ...price.number, currency } }));
  }
  return [...prices];
};
