// Rows of a name, how many and what one costs, with a dash before the price: "corsage x5 - 36, lapel x13 - 17". Where one of them can be no range, none is.

import { decimal } from '../../values/decimal.ts';
import { isNumber, type Token } from './token.ts';

const pieceWord = /^(button|lapel|bouts?$|bouton|bhs?$|cors|crown|halo|wrist|comb|garland)/;
const eachWord = /^(ea|each|apiece|pp)$/;
const priceWord = /^(ea|each|apiece|prices?|priced|vat|gst|hst|tax)$/;
const closes = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^([,;+(]|ea|each|apiece|plus|inc|incl|ex|excl|vat|gst|tax)$/.test(token.text);

interface Row {
  readonly index: number; // how many
  readonly times: boolean; // "x13"
  readonly priced: boolean; // can be no range, or says each
}

const rowAt = (tokens: readonly Token[], index: number): Row | undefined => {
  const [before, count, dash, price] = [tokens[index - 1], tokens[index], tokens[index + 1], tokens[index + 2]];
  if (dash?.text !== '-' || dash.glued || price?.glued !== false || !isNumber(count, 'plain')) return undefined;
  if (!(isNumber(price, 'plain') || isNumber(price, 'money')) || price.number?.max !== undefined || !closes(tokens[index + 3]))
    return undefined;
  const times = before?.text === 'x';
  if (!/^\d{1,3}$/.test(count?.text ?? '') || !(times || pieceWord.test(before?.text ?? ''))) return undefined;
  const [low, high] = [decimal(count?.number?.amount ?? 0), decimal(price.number?.amount ?? 0)];
  const noRange = price.number?.form === 'money' || !high.isInteger() || high.gt(low.times(5));
  return { index, times, priced: noRange || (times && eachWord.test(tokens[index + 3]?.text ?? '')) };
};

/** The numbers of such rows that count: no range begins there. */
export const countsOfColumns = (tokens: readonly Token[]): ReadonlySet<number> => {
  const rows = tokens.flatMap((token, index) => (token.number === undefined ? [] : (rowAt(tokens, index) ?? [])));
  // "lapel x13 - 17, corsage x6 - 28, all prices ea": with another number, that may be the price.
  const alone = rows.length > 1 && tokens.filter(({ number }) => number !== undefined).length === 2 * rows.length;
  const told = alone && rows.every(({ times }) => times) && tokens.some(({ text }) => priceWord.test(text));
  return new Set(told || rows.some(({ priced }) => priced) ? rows.map(({ index }) => index) : []);
};
