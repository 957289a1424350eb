// The buying list as a file and as JSON.
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { buyingFigures } from '../../src/buying/buying-figures.ts';
import { buyingList } from '../../src/buying/buying-list.ts';
import { cut, stems } from '../../src/buying/recipe-lines.ts';
import { textCell, writeBuyingList } from '../../src/buying/write-buying-list.ts';
import type { Day } from '../../src/values/day.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, spool } from './price-rows.ts';

// Cells beginning with = + - @, tab or carriage return may run as formulas: CSV Injection, OWASP Foundation, https://owasp.org/www-community/attacks/CSV_Injection
// (address and list from memory).
describe('no cell can run as a formula', () => {
  test.each([
    ['=1+1', '"\'=1+1"'],
    ['+44 1333', '"\'+44 1333"'],
    ['-2 bunches', '"\'-2 bunches"'],
    ['@SUM(A1)', '"\'@SUM(A1)"'],
    ['\t=1+1', '"\'\t=1+1"'],
    ['\r=1+1', '"\'\r=1+1"'],
    [' =1+1', '"\' =1+1"'],
    ['＝1+1', '"\'＝1+1"'],
    ['=cmd|"/c x"', '"\'=cmd|""/c x"""'],
  ])('%j', (text, cell) => {
    expect(textCell(text)).toBe(cell);
  });

  test.each([
    ['statice', 'statice'],
    ['rose, spray', '"rose, spray"'],
    ['5" ribbon', '"5"" ribbon"'],
    ['baby-blue', 'baby-blue'],
  ])('%s is left alone or only quoted', (text, cell) => {
    expect(textCell(text)).toBe(cell);
  });
});

const list = buyingList(
  [
    {
      id: 't1',
      batches: [{ piece: 'buttonhole', pieces: 40, lines: [stems('bunny tails', 3), cut('ribbon', 30, 'cm')] }],
      keeps: true,
      steps: [],
    },
  ],
  [
    bunch('bunny tails', '14.50', 50, { spare: decimal(10), supplier: '=Saltmarsh, Dried', note: 'natural "and" blush' }),
    spool('ribbon', '11.20', 8, 'yd'),
  ],
  { usualSpare: decimal(0), orderDay: () => '2027-02-26' as Day },
);

test('one line an item, with a byte-order mark and lines ended as the standard says', () => {
  const csv = writeBuyingList(list, 2, () => 'autumn dance');
  expect(csv.startsWith('\ufeff')).toBe(true);
  expect(csv.split('\r\n')).toHaveLength(4);
  const rows: readonly Record<string, string>[] = parse(csv, { bom: true, columns: true });
  expect(rows[0]).toMatchObject({
    'Order by': '2027-02-26',
    Supplier: "'=Saltmarsh, Dried",
    Item: 'bunny tails',
    Need: '132',
    Packs: '3',
    'Pack size': '50',
    'Pack price': '14.50',
    Spend: '43.50',
    'Left over': '18',
    'Left over value': '5.22',
    For: 'autumn dance',
    Status: 'to order',
    Note: 'natural "and" blush',
  });
  expect(rows[1]).toMatchObject({ Supplier: '', Need: '13.13', Unit: 'yd', Packs: '2', Spend: '22.40' }); // 12 m is 13.1234 yd
});

test('the same in JSON, decimals as text', () => {
  expect(buyingFigures(list, 2)[0]).toEqual({
    item: 'bunny tails',
    need: '132',
    packs: 3,
    packSize: '50',
    unit: 'stem',
    spend: '43.50',
    left: '18',
    supplier: '=Saltmarsh, Dried',
    orderBy: '2027-02-26',
    status: 'to order',
  });
});
