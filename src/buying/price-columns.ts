// Which heading of a price list means which column. Suppliers and studios head the same twelve things in many words; order never matters.

import type { Unit } from '../handbook/units.ts';
import { readContainer, readUnit } from '../handbook/units.ts';
import { failed, ok, type Result } from '../values/result.ts';

export const priceColumns = [
  'item',
  'price',
  'size',
  'unit',
  'pack',
  'supplier',
  'lead',
  'spare',
  'stock',
  'drying',
  'role',
  'note',
] as const;
export type PriceColumn = (typeof priceColumns)[number];

export interface Columns {
  readonly at: ReadonlyMap<PriceColumn, number>;
  readonly headings: readonly string[];
  readonly unread: readonly string[]; // headings that mean nothing here
  readonly sizeUnit?: Unit; // "length (m)", "stems per bunch"
  readonly sizePack?: string;
}

// Common practice, no source: how the trade heads its lists. "Length" is not here, for on a flower list it is the stem's; nor "category" or "no".
const sure: Readonly<Record<PriceColumn, readonly string[]>> = {
  item: ['item', 'items', 'item name', 'name', 'ingredient', 'product', 'product name', 'stem name', 'flower name'],
  price: [
    'price',
    'pack price',
    'price per pack',
    'price per bunch',
    'bunch price',
    'box price',
    'pack cost',
    'cost per pack',
    'price a pack',
    'wholesale',
    'wholesale price',
    'trade price',
  ],
  size: [
    'size',
    'pack size',
    'per pack',
    'in a pack',
    'pack qty',
    'pack quantity',
    'pack count',
    'stems per bunch',
    'stems per pack',
    'per bunch',
    'bunch size',
    'stem count',
    'pack length',
    'spool length',
    'roll length',
  ],
  unit: ['unit', 'units', 'pack unit', 'uom', 'unit of measure', 'measure', 'size unit'],
  pack: ['pack', 'pack type', 'sold by', 'sold as', 'sold in', 'container', 'packaging', 'comes in'],
  supplier: ['supplier', 'supplier name', 'vendor', 'wholesaler', 'grower', 'from', 'source', 'merchant'],
  lead: [
    'lead',
    'lead days',
    'lead time',
    'lead time days',
    'lead working days',
    'delivery days',
    'days to deliver',
    'delivery time',
    'order ahead',
  ],
  spare: ['spare', 'spares', 'spare percent', 'spare pct', 'wastage', 'waste', 'wastage percent', 'allowance', 'extra', 'breakage'],
  stock: ['stock', 'in stock', 'stock in hand', 'stock on hand', 'in hand', 'on hand', 'stock level', 'have'],
  drying: ['drying', 'drying days', 'days to dry', 'dry days', 'drying time', 'drying time days', 'days drying'],
  role: ['role', 'part', 'use', 'used as'],
  note: ['note', 'notes', 'comment', 'comments', 'remark', 'remarks'],
};

/** Taken only when no surer heading stands for the same column. */
const unsure: Readonly<Partial<Record<PriceColumn, readonly string[]>>> = {
  item: ['description', 'flower', 'flowers', 'plant', 'variety', 'stem', 'material', 'what'],
  price: ['cost', 'rate'],
  size: ['qty', 'quantity', 'count', 'stems', 'contents'],
  unit: ['per'],
};

const inBrackets = /[([]([^)\]]*)[)\]]/;
const plain = (heading: string): string =>
  heading
    .replace(inBrackets, ' ')
    .toLowerCase()
    .replace(/%/g, ' percent ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^(spare|wastage|waste) percent$/, '$1');

const columnOf = (heading: string, table: Readonly<Partial<Record<PriceColumn, readonly string[]>>>): PriceColumn | undefined =>
  priceColumns.find((column) => table[column]?.includes(plain(heading)) === true);

/** The unit and container a size heading names. */
const sizeWords = (heading: string): { sizeUnit?: Unit; sizePack?: string } => {
  const [first = ''] = heading.toLowerCase().split(/\s/);
  const unit = readUnit(inBrackets.exec(heading)?.[1] ?? '') ?? (first === 'stems' ? readUnit('stem') : undefined);
  const pack = heading
    .split(/[^\p{L}]+/u)
    .map(readContainer)
    .find((word) => word !== undefined && word !== 'pack');
  return { ...(unit === undefined ? {} : { sizeUnit: unit }), ...(pack === undefined ? {} : { sizePack: pack }) };
};

/** Reads the heading row. A list must name its items and prices, and say how much is in a pack by a size or a unit. */
export const readColumns = (headings: readonly string[]): Result<Columns> => {
  const at = new Map<PriceColumn, number>();
  for (const [index, heading] of headings.entries()) {
    const column = columnOf(heading, sure);
    if (column === undefined) continue;
    const before = at.get(column);
    if (before !== undefined) return failed('price-list-column-twice', { column, headings: [headings[before] ?? '', heading] });
    at.set(column, index);
  }
  for (const [index, heading] of headings.entries()) {
    const column = columnOf(heading, unsure);
    if (column !== undefined && !at.has(column) && ![...at.values()].includes(index)) at.set(column, index);
  }
  const missing = (['item', 'price'] as const).filter((column) => !at.has(column));
  if (missing.length > 0 || !(at.has('size') || at.has('unit'))) {
    return failed('price-list-columns-missing', {
      missing: [...missing, ...(at.has('size') || at.has('unit') ? [] : ['size'])],
      seen: headings,
    });
  }
  const used = new Set(at.values());
  const unread = headings.filter((heading, index) => !used.has(index) && heading.trim() !== '');
  return ok({ at, headings, unread, ...sizeWords(headings[at.get('size') ?? -1] ?? '') });
};
