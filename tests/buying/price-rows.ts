// Short ways to write price-list rows in tests.

import type { Item } from '../../src/buying/item.ts';
import { type LengthUnit, stem } from '../../src/handbook/units.ts';
import { decimal } from '../../src/values/decimal.ts';

type Rest = Partial<Omit<Item, 'name' | 'packPrice' | 'size' | 'unit'>>;

export const bunch = (name: string, packPrice: string | number, size: string | number, rest: Rest = {}): Item => ({
  name,
  packPrice: decimal(packPrice),
  size: decimal(size),
  unit: stem,
  pack: 'bunch',
  ...rest,
});

export const spool = (name: string, packPrice: string | number, size: string | number, unit: LengthUnit, rest: Rest = {}): Item => ({
  name,
  packPrice: decimal(packPrice),
  size: decimal(size),
  unit: { measure: 'length', name: unit },
  pack: 'spool',
  ...rest,
});
