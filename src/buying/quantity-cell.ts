// Quantities in a sheet: "50", "8 yd", "bunch of 50", "10 m spool", "14-21 days", "10 %".

import { readContainer, readUnit, type Unit } from '../handbook/units.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import type { RowFaultReason } from '../values/problem.ts';
import { type DecimalMarks, type NumberRead, readNumber } from './number-cell.ts';

export interface Quantity {
  readonly number: Decimal;
  readonly unit?: Unit;
  readonly pack?: string;
}

type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: RowFaultReason };

const joining = new Set(['of', 'per', 'a', 'in', 'x', 'by', '']);

/** A number with the unit and container around it, in any order. */
export const readQuantity = (cell: string, marks: DecimalMarks): Read<Quantity> => {
  const found = /[-−–+(]?[\d.,](?:[\d.,'’\s\u00a0\u202f]*\d)?/.exec(cell);
  if (found === null) return { ok: false, why: cell.trim() === '' ? 'empty' : 'not a number' };
  const number = readNumber(found[0], marks);
  if (!number.ok) return number;
  let quantity: Quantity = { number: number.value };
  for (const word of cell.replace(found[0], ' ').split(/[\s/×()]+/)) {
    const unit = readUnit(word);
    const pack = readContainer(word);
    if (unit !== undefined && quantity.unit === undefined) quantity = { ...quantity, unit };
    else if (pack !== undefined && quantity.pack === undefined) quantity = { ...quantity, pack };
    else if (!joining.has(word.toLowerCase())) return { ok: false, why: 'unit unknown' };
  }
  return { ok: true, value: quantity };
};

/** Whole days. A range counts as its longer end, so that nothing is planned on luck; a week is as many days as the column counts in one. */
export const readDays = (cell: string, daysInWeek: 5 | 7): Read<number> => {
  const found = /^(\d{1,4})(?:\s*(?:-|–|to)\s*(\d{1,4}))?\s*(working |business )?(d|days?|w|wks?|weeks?)?\.?$/i.exec(cell.trim());
  if (found === null) return { ok: false, why: /^[-−]/.test(cell.trim()) ? 'negative' : 'not a whole number' };
  const days = Math.max(Number(found[1]), Number(found[2] ?? 0));
  return { ok: true, value: /^w/i.test(found[4] ?? '') ? days * daysInWeek : days };
};

const mostSpare = decimal(500);

/** A percentage. A part of one ("0.1") is refused: it may well have meant ten. */
export const readPercent = (cell: string, marks: DecimalMarks): NumberRead => {
  const number = readNumber(cell.replace(/%|percent|pct/i, ''), marks);
  if (!number.ok) return number;
  const sensible = number.value.isZero() || (number.value.gte(1) && number.value.lte(mostSpare));
  return sensible ? number : { ok: false, why: 'percent out of range' };
};
