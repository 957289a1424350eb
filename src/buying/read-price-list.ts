// A price list from CSV text: all of its rows, or none of them and the bad ones named by line and reason.

import { CsvError, parse } from 'csv-parse/sync';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { RowFault } from '../values/problem.ts';
import { failed, ok, type Result } from '../values/result.ts';
import type { Item } from './item.ts';
import { decimalMarks } from './number-cell.ts';
import { type PriceColumn, readColumns } from './price-columns.ts';
import { readPriceRow } from './read-price-row.ts';

export interface ImportedPrices {
  readonly items: readonly Item[];
  readonly unread: readonly string[]; // headings nothing was taken from
}

interface Row {
  readonly cells: readonly string[];
  readonly line: number; // where it starts
}

const delimiters = [',', ';', '\t', '|'] as const;

/** The mark that parts most cells of the heading row, quoted text aside. */
const delimiterOf = (text: string): string => {
  const heading = (text.split('\n').find((line) => line.trim() !== '') ?? '').replace(/"[^"]*"/g, '');
  const count = (mark: string) => heading.split(mark).length;
  return delimiters.reduce((best, mark) => (count(mark) > count(best) ? mark : best), ',' as string);
};

const numeric: readonly PriceColumn[] = ['price', 'size', 'spare', 'stock'];

/** Reads the text of a file, or what was pasted. `currency`: the studio's, ISO 4217. */
export const readPriceList = (csv: string, options: { readonly currency: string }): Result<ImportedPrices> => {
  const text = csv
    .replace(/^\ufeff/, '')
    .replace(/\r\n?/g, '\n')
    .replace(/^```\w*\s*\n|\n?```\s*$/g, '');
  if (text.trim() === '') return failed('price-list-empty', {});
  if (text.includes('\ufffd') || text.includes('\u0000')) return failed('price-list-not-text', {});
  const delimiter = delimiterOf(text);
  const split = splitRows(text, delimiter);
  if (!split.ok) return split;
  const [heading, ...under] = split.value;
  const rows = under.filter(({ cells }) => !isHeadingAgain(cells, heading?.cells ?? []));
  const columns = readColumns(heading?.cells ?? []);
  if (!columns.ok) return columns;
  if (rows.length === 0) return failed('price-list-empty', {});

  const cellsOf = (column: PriceColumn) => rows.map(({ cells }) => cells[columns.value.at.get(column) ?? -1] ?? '');
  const marks = decimalMarks(numeric.flatMap(cellsOf), delimiter === ';');
  const context = { columns: columns.value, marks, currency: options.currency };
  const items: Item[] = [];
  const faults: RowFault[] = [];
  const firstLine = new Map<string, number>();
  for (const { cells, line } of rows) {
    const read = readPriceRow(cells, line, context);
    const name = cells[columns.value.at.get('item') ?? -1] ?? '';
    const key = ingredientKey(name);
    const other = key === '' ? undefined : firstLine.get(key);
    if (other === undefined) firstLine.set(key, line);
    else
      faults.push({
        line,
        column: columns.value.headings[columns.value.at.get('item') ?? -1] ?? 'item',
        why: 'name twice',
        value: name,
        other,
      });
    if ('length' in read) faults.push(...read);
    else items.push(read);
  }
  if (faults.length > 0) return failed('price-list-rows-wrong', { rows: rows.length, faults });
  return ok({ items, unread: columns.value.unread });
};

/** A list printed in pages heads each of them. */
const isHeadingAgain = (cells: readonly string[], heading: readonly string[]): boolean =>
  cells.length === heading.length && cells.every((cell, at) => cell.trim().toLowerCase() === heading[at]?.trim().toLowerCase());

/** Whether a message is a list pasted in: its first line heads items and prices, and lines follow. */
export const namesPrices = (text: string): boolean => {
  const [heading = '', ...rows] = text
    .replace(/^\ufeff|^```\w*\s*\n/, '')
    .split(/\r\n?|\n/)
    .filter((line) => line.trim() !== '');
  if (rows.length === 0 || heading.length > longestHeading) return false;
  const delimiter = delimiterOf(heading);
  const columns = readColumns(heading.split(delimiter).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')));
  if (columns.ok || columns.problem.code === 'price-list-column-twice') return true;
  return columns.problem.code === 'price-list-columns-missing' && columns.problem.data.missing.every((column) => column === 'size');
};

const longestHeading = 1000;

/** Rows with any text in them, and the line each starts on. */
const splitRows = (text: string, delimiter: string): Result<readonly Row[]> => {
  try {
    const options = { delimiter, relax_column_count: true, relax_quotes: true, info: true, trim: true } as const;
    const records = parse(text, options) as unknown as readonly {
      readonly record: readonly string[];
      readonly info: { readonly lines: number };
    }[];
    let end = 0;
    return ok(
      records.flatMap(({ record, info }) => {
        const line = end + 1;
        end = info.lines;
        return record.some((cell) => cell.trim() !== '') ? [{ cells: record, line }] : [];
      }),
    );
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return failed('price-list-quote-open', { line: openQuoteLine(text) });
  }
};

/** The line of the quotation mark that is never closed; the parser itself only knows that the text ended. */
const openQuoteLine = (text: string): number => {
  let opened = 1;
  let open = false;
  for (const [at, line] of text.split('\n').entries()) {
    for (const _ of line.matchAll(/"/g)) {
      open = !open;
      if (open) opened = at + 1;
    }
  }
  return opened;
};
