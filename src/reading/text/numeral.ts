// Reads one numeral as typed: 18,500 · 3 250 · 1.234,50 · 8,25 · 1,20,000 · ½. Separators are told apart by the digits after them.

import { thinSpace } from './clean-text.ts';
import { signParts } from './fractions.ts';
import type { NumberRead } from './token.ts';

/** Removes needless zeros: "007.50" is "7.5", "8.00" is "8". Text in, text out, so nothing is rounded. */
export const tidyAmount = (text: string): string => {
  const [whole = '0', fraction = ''] = text.split('.');
  const kept = fraction.replace(/0+$/, '');
  const head = whole.replace(/^0+(?=\d)/, '');
  return kept === '' ? head || '0' : `${head || '0'}.${kept}`;
};

const plain = (text: string): NumberRead => ({ form: 'plain', amount: tidyAmount(text) });

export const readNumeral = (text: string): NumberRead => {
  const fraction = signParts[text];
  if (fraction !== undefined) return plain(fraction);
  if (/^\d{1,3}(\.\d{3})+,\d{1,2}$/.test(text)) return plain(text.replaceAll('.', '').replace(',', '.'));
  const thousands = /^\d{1,3}(?:([,'\u2009])\d{3})+(\.\d{1,4})?$/.exec(text) ?? /^\d{1,2}(?:,\d{2})+,\d{3}(\.\d{1,4})?$/.exec(text);
  if (thousands !== null) return plain(text.replace(/[,']/g, '').replaceAll(thinSpace, ''));
  if (/^\d{1,12},\d{1,2}$/.test(text)) return plain(text.replace(',', '.'));
  if (/^\d{0,12}\.\d{1,6}$/.test(text)) return plain(text);
  if (/^\d{1,12}$/.test(text)) return plain(text);
  return { form: 'code', amount: '' }; // digits in an order we do not know
};
