// The exact quoted amount of each line: its own price, the common price, or its share of a total for all.
// A total is shared by list price where every line has one; else by count within one kind; else by bench minutes; else by count.

import { type Decimal, decimal, sum } from '../values/decimal.ts';
import { failed, ok, type Result } from '../values/result.ts';
import type { Order, PriceLine } from './order.ts';

export type SharedBy = 'count' | 'list price' | 'bench minutes';

export interface LinePrices {
  readonly quoted: readonly Decimal[]; // for all pieces of the line
  readonly sharedBy?: SharedBy; // a total was shared over several lines
}

const ownPrice = (line: PriceLine): Decimal | undefined => {
  if (!line.price) return undefined;
  return line.price.per === 'line' ? line.price.amount : line.price.amount.times(line.count);
};

const share = (total: Decimal, weights: readonly Decimal[]): readonly Decimal[] => {
  const whole = sum(weights);
  return weights.map((weight) => total.times(weight).dividedBy(whole));
};

interface Weights {
  readonly weights: readonly Decimal[];
  readonly by: SharedBy;
}

const weightsOf = (lines: readonly PriceLine[], minutesEach: (piece: PriceLine['piece']) => number | undefined): Weights => {
  const minutes = lines.map((line) => minutesEach(line.piece));
  const oneKind = lines.every((line) => line.piece === lines[0]?.piece);
  if (!oneKind && minutes.every((each) => each !== undefined && each > 0)) {
    return { weights: lines.map((line, index) => decimal(minutes[index] ?? 0).times(line.count)), by: 'bench minutes' };
  }
  return { weights: lines.map((line) => decimal(line.count)), by: 'count' };
};

/** Shares what a total leaves after the lines with their own price over those without; over all of them when each has one. */
const shareTotal = (
  total: Decimal,
  lines: readonly PriceLine[],
  minutesEach: (piece: PriceLine['piece']) => number | undefined,
): Result<LinePrices> => {
  const own = lines.map(ownPrice);
  const open = lines.filter((_, index) => own[index] === undefined);
  const known = own.filter((price): price is Decimal => price !== undefined);
  if (open.length === 0) return ok({ quoted: share(total, known), ...(lines.length > 1 ? { sharedBy: 'list price' as const } : {}) });
  const left = total.minus(sum(known));
  if (left.lessThanOrEqualTo(0)) {
    return failed('total-below-line-prices', { total: total.toString(), lines: sum(known).toString() });
  }
  const { weights, by } = weightsOf(open, minutesEach);
  const shares = share(left, weights);
  const quoted = lines.map((line, index) => own[index] ?? shares[open.indexOf(line)] ?? decimal(0));
  return ok({ quoted, ...(open.length > 1 ? { sharedBy: by } : {}) });
};

/** The quoted amount of every line, or why one has none. Counts and amounts are checked before. */
export const linePrices = (order: Order, minutesEach: (piece: PriceLine['piece']) => number | undefined): Result<LinePrices> => {
  const common = order.price;
  if (common?.per === 'all') return shareTotal(common.amount, order.lines, minutesEach);
  const quoted = order.lines.map((line) => ownPrice(line) ?? common?.amount.times(line.count));
  const missing = order.lines.filter((_, index) => quoted[index] === undefined);
  if (missing.length > 0) return failed('price-missing', { pieces: missing.map((line) => line.piece) });
  return ok({ quoted: quoted.filter((amount): amount is Decimal => amount !== undefined) });
};
