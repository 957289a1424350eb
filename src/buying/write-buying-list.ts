// The buying list as a CSV file (RFC 4180) that opens in a sheet with its accents right and can run nothing there.

import { roundTo } from '../values/rounding.ts';
import type { BuyingList } from './buying-list.ts';
import { shownDown, shownUp } from './shown-quantity.ts';

/** A cell beginning with one of these may be run as a formula; so may one behind its full-width twin. */
const startsFormula = /^[\s\p{Cc}]*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/** Text made inert by an apostrophe where a sheet would run it, and quoted where it must be. */
export const textCell = (text: string): string => {
  const inert = startsFormula.test(text) ? `'${text}` : text;
  return /["',;\t\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
};

const headings = [
  'Order by',
  'Supplier',
  'Item',
  'Need',
  'Unit',
  'Packs',
  'Pack',
  'Pack size',
  'Pack price',
  'Spend',
  'Left over',
  'Left over value',
  'For',
  'Status',
  'Note',
];

/** `coinDigits`: decimals of the currency. Needs are shown up to a hundredth of the unit, what is left down. `eventName`: what people call an event. */
export const writeBuyingList = (list: BuyingList, coinDigits: number, eventName: (id: string) => string): string => {
  const rows = list.groups.flatMap((group) =>
    group.rows.map((row) => [
      row.orderBy ?? '',
      textCell(row.item.supplier ?? ''),
      textCell(row.item.name),
      shownUp(row.need),
      textCell(row.item.unit.name),
      String(row.packs),
      textCell(row.item.pack ?? ''),
      row.item.size.toFixed(),
      row.item.packPrice.toFixed(Math.max(coinDigits, row.item.packPrice.decimalPlaces())),
      row.spend.toFixed(Math.max(coinDigits, row.spend.decimalPlaces())),
      shownDown(row.left),
      roundTo(row.leftValue, coinDigits, 'half up').toFixed(coinDigits),
      textCell(row.events.map(eventName).join('; ')),
      row.status,
      textCell(row.item.note ?? ''),
    ]),
  );
  return `\ufeff${[headings, ...rows].map((cells) => `${cells.join(',')}\r\n`).join('')}`;
};
