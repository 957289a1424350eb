// "Try 20 to 30": the same order at a row of prices. A what-if: it computes and stores nothing.

import type { PieceKind } from '../handbook/pieces.ts';
import { type Decimal, decimal, zero } from '../values/decimal.ts';
import { smallestCoin } from '../values/money.ts';
import type { Problem } from '../values/problem.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { amountProblem } from './check-order.ts';
import { minutesPaid } from './labour-check.ts';
import type { Order, PriceLine } from './order.ts';
import { type PricedLine, type PricedOrder, priceOrder } from './price-order.ts';
import type { PriceTerms } from './price-terms.ts';

const mostRows = 11; // one phone screen
const mostRowsAsked = 25;

export interface LadderRow {
  readonly price: Decimal; // as quoted, each
  readonly priced?: PricedOrder;
  readonly problem?: Problem; // why this price cannot be: the sundries use it up
  readonly line?: PricedLine; // the first line the ladder prices
  readonly minutesPaid?: number; // whole minutes for the order, where the wage cost is known
  readonly recipeFits?: boolean; // where every laddered line's recipe has a cost
}

export interface LadderWanted {
  readonly from: Decimal;
  readonly to: Decimal;
  readonly step?: Decimal;
  readonly piece?: PieceKind; // the kind whose price is tried; left out: the lines without a price of their own
}

/** The finest of 1, 2, 5, 10, 20, 50… coins, not below the studio's price step, that needs no more rows than a phone shows. */
const niceStep = (span: Decimal, { currency, priceStep }: PriceTerms): Decimal => {
  const least = span.greaterThan(priceStep.value) ? priceStep.value : zero;
  let power = smallestCoin(currency);
  for (;;) {
    for (const times of [1, 2, 5]) {
      const step = power.times(times);
      if (step.greaterThanOrEqualTo(least) && span.dividedBy(step).plus(1).lessThanOrEqualTo(mostRows)) return step;
    }
    power = power.times(10);
  }
};

const pricesOf = ({ from, to, step }: LadderWanted, terms: PriceTerms): Result<readonly Decimal[]> => {
  const wrong = amountProblem(from, terms.currency) ?? amountProblem(to, terms.currency);
  if (wrong) return { ok: false, problem: wrong };
  const [low, high] = from.lessThan(to) ? [from, to] : [to, from];
  const by = step ?? niceStep(high.minus(low), terms);
  const rows = by.greaterThan(0) ? high.minus(low).dividedBy(by).floor().plus(1) : decimal(mostRowsAsked + 1);
  if (low.equals(high) || rows.greaterThan(mostRowsAsked)) {
    return failed('ladder-not-a-range', { from: from.toString(), to: to.toString(), step: by.toString() });
  }
  const prices = Array.from({ length: rows.toNumber() }, (_, index) => low.plus(by.times(index)));
  return ok(prices.at(-1)?.equals(high) ? prices : [...prices, high]);
};

/** Which lines the ladder prices. */
const ladderedIn = (order: Order, piece: PieceKind | undefined): ((line: PriceLine) => boolean) => {
  if (piece) return (line) => line.piece === piece;
  const open = order.lines.some((line) => !line.price);
  return open ? (line) => !line.price : (line) => line.piece === order.lines[0]?.piece;
};

const withPrice = (order: Order, isLaddered: (line: PriceLine) => boolean, price: Decimal): Order => ({
  lines: order.lines.map((line) => (isLaddered(line) ? { ...line, price: { amount: price, per: 'each' } } : line)),
  ...(order.price?.per === 'each' ? { price: order.price } : {}),
});

/** One row a step, both ends included. `stemsCost` is what one piece's recipe costs in stems, where it is known. */
export const priceLadder = (
  order: Order,
  terms: PriceTerms,
  wanted: LadderWanted,
  stemsCost: (piece: PieceKind) => Decimal | undefined = () => undefined,
): Result<readonly LadderRow[]> => {
  const prices = pricesOf(wanted, terms);
  if (!prices.ok) return prices;
  const isLaddered = ladderedIn(order, wanted.piece);
  if (!order.lines.some(isLaddered)) return failed('nothing-to-price', {});
  const costs = order.lines.filter(isLaddered).map((line) => stemsCost(line.piece));
  const rowAt = (price: Decimal): LadderRow => {
    const priced = priceOrder(withPrice(order, isLaddered, price), terms);
    if (!priced.ok) return { price, problem: priced.problem };
    const lines = priced.value.lines.filter((_, index) => order.lines[index] !== undefined && isLaddered(order.lines[index]));
    const fits = lines.every((line, index) => costs[index] !== undefined && line.each.exact.stems.greaterThanOrEqualTo(costs[index]));
    return {
      price,
      priced: priced.value,
      ...(lines[0] ? { line: lines[0] } : {}),
      ...(terms.wage ? { minutesPaid: minutesPaid(priced.value.all.exact.labour, terms.wage.cost).floor().toNumber() } : {}),
      ...(costs.every((cost) => cost !== undefined) ? { recipeFits: fits } : {}),
    };
  };
  const rows = prices.value.map(rowAt);
  const wrong = rows.every((row) => row.problem) ? rows[0]?.problem : undefined;
  return wrong ? { ok: false, problem: wrong } : ok(rows);
};
