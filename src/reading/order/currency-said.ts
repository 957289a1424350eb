// A currency said apart from the prices: "4 wrist corsages @ 24, 9 bouts @ 10.50, euro, vat incl", "12 bouts at 14, all in euros".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { codesAfter } from '../words/currency-words.ts';
import type { Price } from './price-at.ts';

const apart = pattern(
  "(,|-|\\(|;|:|\\.) (<all>|all|prices|everything|that's|thats|it's|its|they're|both)? (in|are)? (in)? <c:word> (\\))?",
);
const ends = /^([,;.)(+&-]|and|plus|inc|incl|ex|please|pls|thanks)$/;

// What the same client is asked for besides is in the same money: "11 bouts 9.50 each, brides bouquet £140 is on its own quote".
const besides = /^(delivery|deliver|delivered|deposit|setup|install|installation|collection)$/;
const near = 4; // words
const ofClient = (tokens: readonly Token[], index: number): boolean =>
  tokens.slice(Math.max(0, index - near), index + near + 1).some(({ text, means }) => means['other'] !== undefined || besides.test(text));
const moneyBesides = (tokens: readonly Token[]): Pick<NumberRead, 'currency' | 'symbol'> => {
  const sums = tokens.flatMap(({ number }, index) => ((number?.currency ?? number?.symbol) === undefined ? [] : [{ number, index }]));
  const [first] = sums;
  const alike = new Set(sums.map(({ number }) => number?.currency ?? number?.symbol)).size === 1;
  if (first?.number === undefined || !alike || !sums.every(({ index }) => ofClient(tokens, index))) return {};
  const { currency, symbol } = first.number;
  return { ...(currency === undefined ? {} : { currency }), ...(symbol === undefined ? {} : { symbol }) };
};

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
  const money = moneyBesides(tokens);
  return prices.map((price) => ({ ...price, number: { ...price.number, ...money } }));
};
