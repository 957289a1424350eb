// The priced order as JSON: every figure as printed, money as text with the currency's decimals.

import type { PieceKind } from '../handbook/pieces.ts';
import { fixedMoney, printNumber } from '../values/money.ts';
import { type Parts, partNames } from './parts.ts';
import type { PricedLine, PricedOrder } from './price-order.ts';

export type PartFigures = { readonly [name in (typeof partNames)[number]]: string };

export interface LineFigures {
  readonly piece: PieceKind;
  readonly count: number;
  readonly wearer?: string;
  readonly taxRate?: string; // only where lines are taxed at different rates
  readonly each: PartFigures;
  readonly all: PartFigures;
  readonly headMaths?: { readonly wholesale: string }; // only where lines differ
}

export interface PriceFigures {
  readonly currency: string;
  readonly taxName: string;
  readonly taxRate: string; // percent
  readonly basis: 'included' | 'on top' | 'none';
  readonly labourRule: 'on product' | 'out of the price';
  readonly lines: readonly LineFigures[];
  readonly all: PartFigures;
  readonly headMaths?: { readonly wholesale: string }; // for one piece, where all pieces cost the same
}

const figuresOf = (parts: Parts, currency: string): PartFigures =>
  Object.fromEntries(partNames.map((name) => [name, fixedMoney(parts[name], currency)])) as PartFigures;

const headMathsOf = (line: PricedLine, currency: string) => ({ wholesale: fixedMoney(line.headMaths.wholesale, currency) });

/** `figures.price` of the JSON-lines output. */
export const priceFigures = (priced: PricedOrder): PriceFigures => {
  const { currency, terms, lines } = priced;
  const [first] = lines;
  const oneRate = lines.every((line) => line.rules.taxRate.equals(first?.rules.taxRate ?? line.rules.taxRate));
  const headMaths = lines.map((line) => headMathsOf(line, currency));
  const oneHead = headMaths.every((figures) => figures.wholesale === headMaths[0]?.wholesale);
  return {
    currency,
    taxName: terms.tax.name,
    taxRate: printNumber(terms.tax.rate.value),
    basis: terms.tax.basis.value,
    labourRule: terms.labour.rule.value,
    lines: lines.map((line, index) => ({
      piece: line.piece,
      count: line.count,
      ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
      ...(oneRate ? {} : { taxRate: printNumber(line.rules.taxRate) }),
      each: figuresOf(line.each.printed, currency),
      all: figuresOf(line.all.printed, currency),
      ...(oneHead || !headMaths[index] ? {} : { headMaths: headMaths[index] }),
    })),
    all: figuresOf(priced.all.printed, currency),
    ...(oneHead && headMaths[0] ? { headMaths: headMaths[0] } : {}),
  };
};
