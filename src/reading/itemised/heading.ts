// The heading of a quote sheet: in which column the number, the price and the line's amount stand, and in what money. "code / item / qty / price each"

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { columnGap } from '../text/columns.ts';
import type { Stretch } from '../text/message.ts';
import { codesBefore, signs } from '../words/currency-words.ts';
import type { Column } from './figures.ts';

export interface Heading extends Stretch {
  readonly columns: readonly Column[];
  readonly currency?: string;
  readonly symbol?: string;
}

const word =
  '(qty|quantity|quantities|no|nos|count|pcs|units|unit|rate|rates|price|each|cost|amount|amt|total|line|value|item|items|description|particulars|details|code|sku|product)';
const headed = pattern(word);
const ofCount = /\b(qty|quantit(y|ies)|count|nos|pcs|how many|units)\b/;
const ofLine = /\b(total|amount|amt|line|value|sum)\b/;
const ofEach = /\b(rate|rates|price|each|ea|cost|unit)\b/;

const columnOf = (cell: string): Column | undefined =>
  ofCount.test(cell) && !/price|cost|rate/.test(cell) ? 'count' : ofLine.test(cell) ? 'line' : ofEach.test(cell) ? 'each' : undefined;

const moneyOf = (text: string): { readonly currency?: string; readonly symbol?: string } => {
  const sign = Object.keys(signs).find((each) => text.includes(each));
  const code = /\b(rs|inr|zar|eur|gbp|usd|aud|nzd|cad)\b/.exec(text)?.[1] ?? /\((r)\)/.exec(text)?.[1];
  const currency = sign === undefined ? (code === undefined ? undefined : codesBefore[code]) : signs[sign];
  if (currency !== undefined) return { currency };
  return text.includes('$') ? { symbol: '$' } : {};
};

/** The heading in a stretch without numbers; undefined where it is none. */
export const headingIn = ({ tokens, message }: Reader, { start, end }: Stretch): Heading | undefined => {
  let words = 0;
  for (let index = start; index < end; index++) {
    if (tokens[index]?.number !== undefined || end - start > 24) return undefined;
    if (headed.at(tokens, index, end) !== undefined) words += 1;
  }
  if (words < 2) return undefined;
  const typed = message.words(start, end).toLowerCase();
  const cells = typed.split(new RegExp(`[|/,;]|${columnGap(message.clean).source}`)).filter((cell) => cell.trim() !== '');
  const columns = (cells.length > 1 ? cells : typed.split(' ')).flatMap((cell) => columnOf(cell) ?? []);
  const plain = new Set(columns).size === columns.length && columns.includes('count') && columns.length > 1;
  return plain ? { start, end, columns, ...moneyOf(typed) } : undefined;
};
