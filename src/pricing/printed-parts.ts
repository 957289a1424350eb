// From exact parts to printed ones that add up in both directions: parts to their total in every row, rows to the total row in every column.
// The total is rounded first, then shared over the lines by largest remainder, so the figure the client pays is never a sum of roundings.

import { allocate } from '../values/allocate.ts';
import { type Decimal, sum } from '../values/decimal.ts';
import { smallestCoin, toCoin } from '../values/money.ts';
import { type Parts, sumParts } from './parts.ts';
import { roundedTax, taxedAlike, taxParts } from './tax-rounding.ts';
import type { TaxTerms } from './tax-terms.ts';

/** A line's exact parts, the amount they were worked out from, and the tax it bears. */
export interface ExactLine {
  readonly quoted: Decimal;
  readonly exact: Parts;
  readonly tax: TaxTerms;
}

interface Printed {
  readonly lines: readonly Parts[];
  readonly all: Parts;
}

const differences = (from: readonly Decimal[], less: readonly Decimal[]): readonly Decimal[] =>
  from.map((amount, index) => (less[index] ? amount.minus(less[index]) : amount));

/** Lines taxed alike are rounded together; by line, each keeps its own rounding. */
const printedTax = (lines: readonly ExactLine[], quoted: readonly Decimal[], currency: string): readonly Decimal[] => {
  const printed = new Map<ExactLine, Decimal>();
  for (const alike of taxedAlike(lines)) {
    const tax = alike[0]?.tax;
    if (!tax) continue;
    if (tax.level.value === 'line') {
      for (const line of alike) printed.set(line, roundedTax(line.quoted, tax, currency));
      continue;
    }
    const total = sum(
      taxParts(
        alike.map((line) => line.quoted),
        tax,
        currency,
      ).map((part) => part.amount),
    );
    const caps = tax.basis.value === 'included' ? alike.map((line) => quoted[lines.indexOf(line)] ?? line.quoted) : undefined;
    const shares = allocate(
      total,
      alike.map((line) => line.quoted),
      smallestCoin(currency),
      caps,
    );
    alike.forEach((line, index) => {
      printed.set(line, shares[index] ?? total);
    });
  }
  return lines.map((line) => printed.get(line) ?? line.exact.tax);
};

/** Splits the total into two named parts, then gives each line its share of the first, never more than the line holds. */
const split = (total: Decimal, ofLines: readonly Decimal[], first: readonly Decimal[], second: readonly Decimal[], coin: Decimal) => {
  const [whole = total] = allocate(total, [sum(first), sum(second)], coin);
  const parts = allocate(whole, first, coin, ofLines);
  return { first: parts, second: differences(ofLines, parts) };
};

/** Prints lines and their total. All lines share one basis and currency. */
export const printParts = (lines: readonly ExactLine[], currency: string): Printed => {
  const coin = smallestCoin(currency);
  const column = (of: (line: ExactLine) => Decimal): readonly Decimal[] => lines.map(of);
  const shared = (of: (line: ExactLine) => Decimal): readonly Decimal[] => allocate(toCoin(sum(column(of)), currency), column(of), coin);

  const quoted = shared((line) => line.quoted);
  const tax = printedTax(lines, quoted, currency);
  const included = lines[0]?.tax.basis.value === 'included';
  const exTax = included ? differences(quoted, tax) : quoted;
  const labour = split(
    sum(exTax),
    exTax,
    column((line) => line.exact.labour),
    column((line) => line.exact.product),
    coin,
  );
  const wholesale = shared((line) => line.exact.wholesale);
  const bought = split(
    sum(wholesale),
    wholesale,
    column((line) => line.exact.sundries),
    column((line) => line.exact.stems),
    coin,
  );

  const printed = lines.map((line, index): Parts => {
    const at = (values: readonly Decimal[], otherwise: Decimal): Decimal => values[index] ?? otherwise;
    const taxHere = at(tax, line.exact.tax);
    const exTaxHere = at(exTax, line.exact.exTax);
    return {
      price: exTaxHere.plus(taxHere),
      tax: taxHere,
      exTax: exTaxHere,
      labour: at(labour.first, line.exact.labour),
      product: at(labour.second, line.exact.product),
      wholesale: at(wholesale, line.exact.wholesale),
      sundries: at(bought.first, line.exact.sundries),
      stems: at(bought.second, line.exact.stems),
    };
  });
  return { lines: printed, all: sumParts(printed) };
};
