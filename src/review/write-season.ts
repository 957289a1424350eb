// The season as a CSV file (RFC 4180), one row an event, that can run nothing in a sheet. No row of sums: a sheet makes its own.

import { textCell } from '../buying/write-buying-list.ts';
import type { Decimal } from '../values/decimal.ts';
import { fixedMoney } from '../values/money.ts';
import { roundTo } from '../values/rounding.ts';
import type { Season, SeasonRow } from './season.ts';

const headings = [
  'Event',
  'Date',
  'Pieces',
  'Price before tax',
  'Wholesale planned',
  'Wholesale actual',
  'Labour planned',
  'Labour actual',
  'Minutes planned',
  'Minutes actual',
  'Left after goods',
  'Left after goods and labour',
  'Margin after goods %',
  'Markup on goods %',
  'Margin after goods and labour %',
];

const rowOf = ({ title, date, review }: SeasonRow, currency: string): readonly string[] => {
  const { printed, afterGoods, afterLabour } = review;
  const { all } = printed;
  const money = (amount: Decimal | undefined): string => (amount === undefined ? '' : fixedMoney(amount, currency));
  const number = (amount: Decimal | undefined, places: number): string =>
    amount === undefined ? '' : roundTo(amount, places, 'half up').toFixed(places);
  return [
    textCell(title ?? ''),
    date ?? '',
    String(review.pieces),
    money(all.exTax),
    money(all.wholesale.planned),
    money(all.wholesale.actual),
    money(all.labour.planned),
    money(all.labour.actual),
    number(all.minutes.planned, 0),
    number(all.minutes.actual, 0),
    money(all.leftAfterGoods.actual),
    money(all.leftAfterLabour.actual),
    number(afterGoods.margin.actual, 1),
    number(afterGoods.markup.actual, 1),
    number(afterLabour.margin.actual, 1),
  ];
};

/** A cell is empty where the figure is not known. Money has the currency's decimals, percentages one. */
export const writeSeason = (season: Season, currency: string): string =>
  `\ufeff${[headings, ...season.rows.map((row) => rowOf(row, currency))].map((cells) => `${cells.join(',')}\r\n`).join('')}`;
