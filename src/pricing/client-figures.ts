// The client's form of a price: pieces, prices and the tax statement. No costs, no labour, nothing of the studio's own sums.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Decimal } from '../values/decimal.ts';
import { cashTotal } from './cash-total.ts';
import type { PricedOrder } from './price-order.ts';
import type { TaxPartAmount } from './tax-rounding.ts';
import type { TaxBasis } from './tax-terms.ts';

export interface ClientLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly wearer?: string;
  readonly each?: Decimal; // as quoted; absent where the line's price doesn't divide into whole coins
  readonly all: Decimal; // as quoted: with the tax in it, or before it
}

export interface ClientFigures {
  readonly currency: string;
  readonly lines: readonly ClientLine[];
  readonly beforeTax: Decimal;
  readonly taxes: readonly TaxPartAmount[]; // empty when there is none; in whole coins
  readonly tax: Decimal;
  readonly total: Decimal; // to pay
  readonly basis: TaxBasis;
  readonly cashTotal?: Decimal; // where it differs
}

/** Everything in it is printed money: lines, tax and total add up as they stand. */
export const clientFigures = (priced: PricedOrder): ClientFigures => {
  const onTop = priced.terms.tax.basis.value === 'on top';
  const cash = cashTotal(priced);
  const { price, tax, exTax } = priced.all.printed;
  return {
    currency: priced.currency,
    lines: priced.lines.map((line) => {
      const each = onTop ? line.each.printed.exTax : line.each.printed.price;
      const all = onTop ? line.all.printed.exTax : line.all.printed.price;
      return {
        piece: line.piece,
        count: line.count,
        ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
        ...(each.times(line.count).equals(all) ? { each } : {}),
        all,
      };
    }),
    beforeTax: exTax,
    taxes: priced.taxParts,
    tax,
    total: price,
    basis: priced.terms.tax.basis.value,
    ...(cash ? { cashTotal: cash } : {}),
  };
};
