// The parts of a price, from what the client pays down to the stems. Three sums hold at every level:
// price = tax + exTax, exTax = labour + product, wholesale = sundries + stems.

import { type Decimal, sum } from '../values/decimal.ts';

export interface Parts {
  readonly price: Decimal; // what the client pays, tax and all
  readonly tax: Decimal;
  readonly exTax: Decimal;
  readonly labour: Decimal;
  readonly product: Decimal;
  readonly wholesale: Decimal; // what may be spent on everything bought
  readonly sundries: Decimal;
  readonly stems: Decimal;
}

export const partNames = ['price', 'tax', 'exTax', 'labour', 'product', 'wholesale', 'sundries', 'stems'] as const;

/** The same figures exactly and as printed. Printed parts add up to their printed totals. */
export interface Figures {
  readonly exact: Parts;
  readonly printed: Parts;
}

const mapParts = (of: (name: (typeof partNames)[number]) => Decimal): Parts => ({
  price: of('price'),
  tax: of('tax'),
  exTax: of('exTax'),
  labour: of('labour'),
  product: of('product'),
  wholesale: of('wholesale'),
  sundries: of('sundries'),
  stems: of('stems'),
});

export const sumParts = (all: readonly Parts[]): Parts => mapParts((name) => sum(all.map((parts) => parts[name])));
