// The tax of an order in whole coins. By invoice: each rate is worked out on the sum and rounded once. By line: each line is rounded, then added.
// Both are lawful in most places and differ by coins: 40 × 25 including 10 % is 90.91 by invoice and, piece by piece, 90.80.

import { type Decimal, sum } from '../values/decimal.ts';
import { toCoin } from '../values/money.ts';
import { taxOf } from './ex-tax.ts';
import type { TaxTerms } from './tax-terms.ts';

/** Lines that bear the same taxes, in the order they come: an invoice rounds each such group once. */
export const taxedAlike = <Line extends { readonly tax: TaxTerms }>(lines: readonly Line[]): readonly (readonly Line[])[] => {
  const groups = new Map<string, Line[]>();
  for (const line of lines) {
    const key = [line.tax.basis.value, ...line.tax.parts.map((part) => `${part.name} ${part.rate.toString()}`)].join(', ');
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()];
};

/** One tax in whole coins, by the regime's rounding. */
const roundedPart = (quoted: Decimal, part: { readonly rate: Decimal }, tax: TaxTerms, currency: string): Decimal =>
  toCoin(taxOf(quoted, part.rate, tax.rate.value, tax.basis.value), currency, tax.rounding);

/** Tax on a quoted amount in whole coins: each part (GST, QST) rounded apart, then added. */
export const roundedTax = (quoted: Decimal, tax: TaxTerms, currency: string): Decimal =>
  sum(tax.parts.map((part) => roundedPart(quoted, part, tax, currency)));

export interface TaxPartAmount {
  readonly name: string;
  readonly rate: Decimal;
  readonly amount: Decimal;
}

/** The printed tax by its parts, by invoice or by line as the terms say. */
export const taxParts = (quoted: readonly Decimal[], tax: TaxTerms, currency: string): readonly TaxPartAmount[] =>
  tax.parts.map((part) => ({
    ...part,
    amount:
      tax.level.value === 'invoice'
        ? roundedPart(sum(quoted), part, tax, currency)
        : sum(quoted.map((amount) => roundedPart(amount, part, tax, currency))),
  }));
