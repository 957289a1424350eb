// A price in a sheet: a number with or without a currency sign or code. A currency that isn't the studio's is refused, never converted.

import { currencies, currencySign } from '../values/currency.ts';
import { zero } from '../values/decimal.ts';
import { type DecimalMarks, type NumberRead, readNumber } from './number-cell.ts';

const free = new Set(['free', 'nil', 'none', 'foraged', 'homegrown', 'home grown', 'own', 'garden']);
const signs: Readonly<Record<string, string>> = {
  '£': 'GBP',
  '€': 'EUR',
  '¥': 'JPY',
  '₹': 'INR',
  US$: 'USD',
  A$: 'AUD',
  AU$: 'AUD',
  NZ$: 'NZD',
  C$: 'CAD',
  CA$: 'CAD',
};

/** The currency a sign or code stands for; a bare dollar is the studio's where the studio counts in dollars. */
const currencyOf = (mark: string, studio: string): string | undefined => {
  const code = mark.toUpperCase();
  if (mark === '$') return currencySign(studio) === '$' ? studio : 'USD';
  if (code === '¥' && (studio === 'CNY' || studio === 'JPY')) return studio;
  return signs[code] ?? (currencies.includes(code) ? code : undefined);
};

/** Reads "£14.50", "14,50 €", "GBP 14.50", "free". `currency`: the studio's, ISO 4217. */
export const readPrice = (cell: string, currency: string, marks: DecimalMarks): NumberRead => {
  const text = cell.trim();
  if (free.has(text.toLowerCase())) return { ok: true, value: zero };
  const parts = /^([-−–+(]?)\s*([^\d\s.,+−–(-]*)\s*([-−–]?[\d.,\s\u00a0\u202f'’]*?)\s*([^\d\s.,)]*)\)?$/u.exec(text);
  if (parts === null) return { ok: false, why: 'not a number' };
  const [, sign = '', before = '', number = '', after = ''] = parts;
  for (const mark of [before, after].filter((word) => word !== '')) {
    const said = currencyOf(mark, currency);
    if (said === undefined) return { ok: false, why: 'not a number' };
    if (said !== currency) return { ok: false, why: 'other currency' };
  }
  return readNumber(sign + number, marks);
};
