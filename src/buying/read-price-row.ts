// One row of a price list: an item, or every cell that cannot stand and why.

import { readRole } from '../handbook/roles.ts';
import { isWound, readContainer, readUnit, stem, type Unit } from '../handbook/units.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import type { RowFault, RowFaultReason } from '../values/problem.ts';
import type { Item } from './item.ts';
import { readPrice } from './money-cell.ts';
import type { DecimalMarks } from './number-cell.ts';
import type { Columns, PriceColumn } from './price-columns.ts';
import { readDays, readPercent, readQuantity } from './quantity-cell.ts';

export interface RowContext {
  readonly columns: Columns;
  readonly marks: DecimalMarks;
  readonly currency: string;
}

const longestName = 80;

/** Our own export puts an apostrophe before a cell a sheet would run as a formula; it is not part of the name. */
const nameOf = (cell: string): string =>
  cell
    .replace(/^'(?=[=+\-@])/, '')
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim();

interface Pack {
  readonly size: Decimal;
  readonly unit: Unit;
  readonly pack?: string;
}

const sameUnit = (a: Unit, b: Unit): boolean => a.measure === b.measure && a.name === b.name;

export const readPriceRow = (
  cells: readonly string[],
  line: number,
  { columns, marks, currency }: RowContext,
): Item | readonly RowFault[] => {
  const faults: RowFault[] = [];
  const cell = (column: PriceColumn): string => cells[columns.at.get(column) ?? -1]?.trim() ?? '';
  const fault = (column: PriceColumn, why: RowFaultReason): undefined => {
    faults.push({ line, column: columns.headings[columns.at.get(column) ?? -1] ?? column, why, value: cell(column).slice(0, longestName) });
    return undefined;
  };
  const read = <T>(
    column: PriceColumn,
    reader: (text: string) => { ok: true; value: T } | { ok: false; why: RowFaultReason },
  ): T | undefined => {
    if (cell(column) === '') return undefined;
    const result = reader(cell(column));
    return result.ok ? result.value : fault(column, result.why);
  };

  const readPack = (): Pack | undefined => {
    const said = read('size', (text) => readQuantity(text, marks));
    if (cell('size') !== '' && said === undefined) return undefined;
    const unitCell = cell('unit');
    const cellUnit = readUnit(unitCell);
    const container = readContainer(cell('pack')) ?? said?.pack ?? readContainer(unitCell) ?? columns.sizePack;
    if (unitCell !== '' && cellUnit === undefined && readContainer(unitCell) === undefined) return fault('unit', 'unit unknown');
    if (cell('pack') !== '' && readContainer(cell('pack')) === undefined && readUnit(cell('pack')) === undefined)
      return fault('pack', 'unit unknown');
    const own = said?.unit ?? cellUnit;
    if (said?.unit !== undefined && cellUnit !== undefined && !sameUnit(said.unit, cellUnit)) return fault('size', 'units disagree');
    const unit = own ?? columns.sizeUnit;
    const named = container === undefined ? {} : { pack: container };
    if (said === undefined) return unit !== undefined && container === undefined ? { size: decimal(1), unit } : fault('size', 'empty');
    if (said.number.isZero()) return fault('size', 'zero pack size');
    if (unit === undefined && container !== undefined && isWound(container)) {
      return said.number.eq(1) ? { size: said.number, unit: { measure: 'count', name: container } } : fault('size', 'length unit missing');
    }
    return { size: said.number, unit: unit ?? stem, ...named };
  };

  const readStock = (pack: Pack | undefined): Decimal | undefined => {
    const said = read('stock', (text) => readQuantity(text, marks));
    if (said === undefined || pack === undefined) return undefined;
    if (said.unit !== undefined && !sameUnit(said.unit, pack.unit)) return fault('stock', 'units disagree');
    return said.pack !== undefined && said.unit === undefined ? said.number.times(pack.size) : said.number;
  };

  const name = nameOf(cell('item'));
  if (name === '') fault('item', 'empty');
  if (name.length > longestName) fault('item', 'name too long');
  const price = cell('price') === '' ? fault('price', 'empty') : read('price', (text) => readPrice(text, currency, marks));
  const pack = readPack();
  const stock = readStock(pack);
  const lead = read('lead', (text) => readDays(text, 5));
  const drying = read('drying', (text) => readDays(text, 7));
  const spare = read('spare', (text) => readPercent(text, marks));
  const role = readRole(cell('role'));
  if (cell('role') !== '' && role === undefined) fault('role', 'role unknown');
  const extra = cells.slice(columns.headings.length).find((text) => text.trim() !== '');
  if (extra !== undefined) faults.push({ line, column: '', why: 'too many cells', value: extra.slice(0, longestName) });
  if (faults.length > 0 || price === undefined || pack === undefined) return faults;
  return {
    name,
    packPrice: price,
    ...pack,
    ...(cell('supplier') === '' ? {} : { supplier: nameOf(cell('supplier')) }),
    ...(lead === undefined ? {} : { leadDays: lead }),
    ...(spare === undefined ? {} : { spare }),
    ...(stock === undefined ? {} : { stock }),
    ...(drying === undefined ? {} : { dryingDays: drying }),
    ...(role === undefined ? {} : { role }),
    ...(cell('note') === '' ? {} : { note: cell('note') }),
  };
};
