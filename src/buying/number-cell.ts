// Numbers as people type them in a sheet: 14.50, 14,50, £1,250.00, 1.250,00, 50 %. One that could be two numbers is refused, never guessed.

import { type Decimal, decimal } from '../values/decimal.ts';
import type { RowFaultReason } from '../values/problem.ts';

/** How this file writes decimals, as far as its clear numbers tell. */
export interface DecimalMarks {
  readonly point: boolean; // 14.50 was seen
  readonly comma: boolean; // 14,50 was seen
  readonly semicolons: boolean; // cells are parted by semicolons, as where the comma is the decimal mark
}

export type NumberRead = { readonly ok: true; readonly value: Decimal } | { readonly ok: false; readonly why: RowFaultReason };

const spaces = /[\s\u00a0\u202f'’]/g;
const clearPoint = /\d*\.(\d{1,2}|\d{4,})$|^0?\.\d+$|,\d{3}\.\d+$/;
const clearComma = /\d*,(\d{1,2}|\d{4,})$|^0?,\d+$|\.\d{3},\d+$/;

/** Looks through cells that hold numbers for clear decimals. */
export const decimalMarks = (cells: readonly string[], semicolons: boolean): DecimalMarks => {
  const numbers = cells.map((cell) => cell.replace(/[^\d.,]/g, ''));
  return { point: numbers.some((text) => clearPoint.test(text)), comma: numbers.some((text) => clearComma.test(text)), semicolons };
};

const exactly = (text: string): NumberRead => ({ ok: true, value: decimal(text.startsWith('.') ? `0${text}` : text) });
const unclear: NumberRead = { ok: false, why: 'number unclear' };

/** Three digits after a single mark: thousands or a decimal, by what the rest of the file does. */
const threeAfter = (whole: string, part: string, mark: 'point' | 'comma', marks: DecimalMarks): NumberRead => {
  const other = mark === 'point' ? 'comma' : 'point';
  if (marks[mark] && !marks[other]) return exactly(`${whole}.${part}`);
  if (marks[other] && !marks[mark]) return exactly(`${whole}${part}`);
  return mark === 'point' && !marks.comma && !marks.semicolons ? exactly(`${whole}.${part}`) : unclear;
};

/** Reads a number without its sign of currency, unit or percent. */
export const readNumber = (cell: string, marks: DecimalMarks): NumberRead => {
  const text = cell
    .trim()
    .replace(/(?<=\d)[\s\u00a0\u202f'’](?=\d{3}(\D|$))/g, '')
    .replace(spaces, '');
  if (text === '') return { ok: false, why: 'empty' };
  if (/^[-−–(]/.test(text)) return { ok: false, why: /\d/.test(text) ? 'negative' : 'not a number' };
  const bare = text.replace(/^\+/, '');
  if (/^\d{1,15}$/.test(bare)) return exactly(bare);
  if (/^\d{1,3}(,\d{3})+\.\d+$/.test(bare) || /^\d{1,3}(,\d{3}){2,}$/.test(bare)) return exactly(bare.replaceAll(',', ''));
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(bare) || /^\d{1,3}(\.\d{3}){2,}$/.test(bare))
    return exactly(bare.replaceAll('.', '').replace(',', '.'));
  const single = /^(\d{0,12})([.,])(\d{1,12})$/.exec(bare);
  if (single === null) return { ok: false, why: 'not a number' };
  const [, whole = '', mark, part = ''] = single;
  if (/^[1-9]\d{0,2}$/.test(whole) && part.length === 3) return threeAfter(whole, part, mark === '.' ? 'point' : 'comma', marks);
  return exactly(`${whole}.${part}`);
};
