// Whether the labour money pays for the minutes planned at the bench, and what would: the gap, the cures and the hourly figure the work earns.

import type { PieceKind } from '../handbook/pieces.ts';
import { type Decimal, decimal, sum } from '../values/decimal.ts';
import { quotedFor } from './ex-tax.ts';
import { askedPrice, type WorkedOutPrice } from './price-for.ts';
import type { PricedLine, PricedOrder } from './price-order.ts';

const perHour = decimal(60);

/** Minutes that this labour money pays for at this wage cost per hour. Exact. */
export const minutesPaid = (labour: Decimal, wageCost: Decimal): Decimal => labour.times(perHour).dividedBy(wageCost);

export interface LabourOfLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly paidEach: number; // whole minutes, the rest dropped
  readonly plannedEach: number;
  /** The quoted price each that pays for the planned minutes with the stems as they are; only where this line falls short. */
  readonly keepingStems?: WorkedOutPrice;
}

export interface LabourCheck {
  readonly lines: readonly LabourOfLine[];
  readonly paid: number; // whole minutes for the order
  readonly planned: number;
  readonly short: number; // minutes planned beyond those paid, rounded up; 0 when covered
  readonly hourly?: Decimal; // labour money per planned hour; absent when nothing is planned
  /** The quoted price each, line by line, at which the same labour share pays for every planned minute; only when short and labour is charged. */
  readonly atSameShare?: readonly WorkedOutPrice[];
}

const neededLabour = (plannedEach: number, wageCost: Decimal): Decimal => wageCost.times(plannedEach).dividedBy(perHour);

const keepingStems = (line: PricedLine, plannedEach: number, wageCost: Decimal, priced: PricedOrder): WorkedOutPrice => {
  const exTax = line.each.exact.product.plus(neededLabour(plannedEach, wageCost));
  return askedPrice(quotedFor(exTax, line.rules.taxRate, line.rules.basis), line.piece, priced.terms);
};

/** `wageCost` is per hour with on-costs; `minutesEach` the bench minutes planned for one piece of the line. */
export const checkLabour = (priced: PricedOrder, wageCost: Decimal, minutesEach: (line: PricedLine) => number): LabourCheck => {
  const lines = priced.lines.map((line): LabourOfLine => {
    const plannedEach = minutesEach(line);
    const paidEach = minutesPaid(line.each.exact.labour, wageCost);
    return {
      piece: line.piece,
      count: line.count,
      paidEach: paidEach.floor().toNumber(),
      plannedEach,
      ...(paidEach.lessThan(plannedEach) ? { keepingStems: keepingStems(line, plannedEach, wageCost, priced) } : {}),
    };
  });
  const labour = priced.all.exact.labour;
  const paid = minutesPaid(labour, wageCost);
  const planned = sum(lines.map((line) => decimal(line.plannedEach).times(line.count)));
  const short = planned.greaterThan(paid) ? planned.minus(paid) : decimal(0);
  const curable = short.greaterThan(0) && paid.greaterThan(0);
  return {
    lines,
    paid: paid.floor().toNumber(),
    planned: planned.toNumber(),
    short: short.ceil().toNumber(),
    ...(planned.isZero() ? {} : { hourly: labour.times(perHour).dividedBy(planned) }),
    ...(curable
      ? { atSameShare: priced.lines.map((line) => askedPrice(line.quotedEach.times(planned).dividedBy(paid), line.piece, priced.terms)) }
      : {}),
  };
};
