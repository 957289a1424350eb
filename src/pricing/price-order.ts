// The price answer: an order and its terms become the exact and printed parts of each piece, each line and the whole.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import { type Decimal, decimal, sum } from '../values/decimal.ts';
import { fixedMoney, toCoin } from '../values/money.ts';
import type { Problem } from '../values/problem.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { labourProblem, multipleProblem, orderProblem, sundriesProblem, taxProblem } from './check-order.ts';
import { type HeadMaths, headMaths } from './head-maths.ts';
import { labourOfExTax } from './labour-share.ts';
import { linePrices, type SharedBy } from './line-prices.ts';
import type { Order, PriceLine } from './order.ts';
import { type Figures, type Parts, sumParts } from './parts.ts';
import type { PriceTerms } from './price-terms.ts';
import { type ExactLine, printParts } from './printed-parts.ts';
import { type ChainRules, partsOf } from './stem-budget.ts';
import { type TaxPartAmount, taxedAlike, taxParts } from './tax-rounding.ts';
import type { TaxTerms } from './tax-terms.ts';

export interface PricedLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly wearer?: string;
  readonly material?: Material;
  readonly tax: TaxTerms;
  readonly rules: ChainRules;
  readonly quotedEach: Decimal; // exact, as the price was quoted
  readonly each: Figures;
  readonly all: Figures;
  readonly headMaths: HeadMaths; // for one piece, exact
  readonly labourOfExTax: Decimal; // percent
  readonly belowMinimum?: Decimal; // the studio's minimum for the kind, when this price is under it
}

export interface PricedOrder {
  readonly currency: string;
  readonly terms: PriceTerms;
  readonly lines: readonly PricedLine[];
  readonly all: Figures;
  readonly taxParts: readonly TaxPartAmount[]; // of the whole order, in whole coins
  readonly sharedBy?: SharedBy; // how a total was shared over the lines
}

const taxOfLine = (line: PriceLine, terms: PriceTerms): TaxTerms =>
  (line.material ? terms.taxByMaterial?.[line.material] : undefined) ?? terms.tax;

/** The chain's figures for one kind of piece under these terms. */
export const chainRules = (line: Pick<PriceLine, 'piece' | 'material'>, terms: PriceTerms): ChainRules => {
  const own = terms.forPiece?.(line.piece);
  const labour = own?.labour ?? terms.labour;
  const multiples = own?.multiples ?? terms.multiples;
  const tax = taxOfLine({ ...line, count: 1 }, terms);
  return {
    taxRate: tax.rate.value,
    basis: tax.basis.value,
    labour: { rule: labour.rule.value, share: labour.share.value },
    stemsMultiple: multiples.stems.value,
    sundriesMultiple: multiples.sundries.value,
  };
};

/** What is wrong with the terms themselves. */
export const rulesOutOfRange = (rules: ChainRules): Problem | undefined =>
  taxProblem(rules.taxRate) ??
  labourProblem(rules.labour) ??
  multipleProblem('stems', rules.stemsMultiple) ??
  multipleProblem('sundries', rules.sundriesMultiple);

const priceLine = (line: PriceLine, quoted: Decimal, terms: PriceTerms): Result<PricedLine> => {
  const rules = chainRules(line, terms);
  const sundries = terms.sundriesEach(line.piece).value;
  const wrong = rulesOutOfRange(rules) ?? sundriesProblem(sundries);
  if (wrong) return { ok: false, problem: wrong };
  const tax = taxOfLine(line, terms);
  const own = line.price?.per === 'each' ? line.price.amount : undefined;
  const quotedEach = own?.times(line.count).equals(quoted) ? own : quoted.dividedBy(line.count);
  const each = partsOf(quotedEach, sundries, rules);
  if (each.stems.isNegative()) {
    const room = toCoin(each.product.dividedBy(rules.sundriesMultiple), terms.currency, 'down');
    return failed('sundries-use-up-price', {
      sundries: fixedMoney(sundries, terms.currency),
      room: fixedMoney(room, terms.currency),
      piece: line.piece,
    });
  }
  const all = partsOf(quoted, sundries.times(line.count), rules);
  const printedEach = printParts([{ quoted: quotedEach, exact: each, tax }], terms.currency).all;
  const minimum = terms.minimumPrice(line.piece)?.value;
  return ok({
    piece: line.piece,
    count: line.count,
    ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
    ...(line.material === undefined ? {} : { material: line.material }),
    tax,
    rules,
    quotedEach,
    each: { exact: each, printed: printedEach },
    all: { exact: all, printed: all },
    headMaths: headMaths(quotedEach, rules),
    labourOfExTax: labourOfExTax(rules.labour),
    ...(minimum && quotedEach.lessThan(minimum) ? { belowMinimum: minimum } : {}),
  });
};

/** The tax of the whole order by its parts, lines taxed alike together. */
const taxPartsOf = (lines: readonly ExactLine[], currency: string): readonly TaxPartAmount[] =>
  taxedAlike(lines).flatMap((alike) => {
    const quoted = alike.map((line) => line.quoted);
    return alike[0] ? taxParts(quoted, alike[0].tax, currency) : [];
  });

/** The line's printed figures. A line of one piece shows the same figures twice, so one copy serves both. */
const withPrinted = (line: PricedLine, printed: Parts): PricedLine => ({
  ...line,
  each: line.count === 1 ? { ...line.each, printed } : line.each,
  all: { ...line.all, printed },
});

/** Prices an order. Every problem a person's figures can cause comes back as a value; nothing is stored or rounded on the way. */
export const priceOrder = (order: Order, terms: PriceTerms): Result<PricedOrder> => {
  const wrong = orderProblem(order, terms.currency);
  if (wrong) return { ok: false, problem: wrong };
  const prices = linePrices(order, terms.minutesEach);
  if (!prices.ok) return prices;
  const lines: PricedLine[] = [];
  const exact: ExactLine[] = [];
  for (const [index, line] of order.lines.entries()) {
    const quoted = prices.value.quoted[index] ?? decimal(0);
    const priced = priceLine(line, quoted, terms);
    if (!priced.ok) return priced;
    lines.push(priced.value);
    exact.push({ quoted, exact: priced.value.all.exact, tax: priced.value.tax });
  }
  const printed = printParts(exact, terms.currency);
  return ok({
    currency: terms.currency,
    terms,
    lines: lines.map((line, index) => withPrinted(line, printed.lines[index] ?? line.all.printed)),
    all: { exact: sumParts(exact.map((line) => line.exact)), printed: printed.all },
    taxParts: taxPartsOf(exact, terms.currency),
    ...(prices.value.sharedBy ? { sharedBy: prices.value.sharedBy } : {}),
  });
};

/** Pieces in the order. */
export const piecesIn = (priced: PricedOrder): number => sum(priced.lines.map((line) => decimal(line.count))).toNumber();
