// The figures of a look-back: what came in, what went out, what was left. Margin and markup are worked out apart, from the same costs.

import type { Parts } from '../pricing/parts.ts';
import { type Decimal, sum, zero } from '../values/decimal.ts';
import { toCoin } from '../values/money.ts';
import { type Compared, compared, comparedBy } from './compared.ts';
import { marginOf, markupOf } from './margin.ts';

/** Money before tax in the studio's currency, minutes at the bench; exact. */
export interface ReviewFigures {
  readonly exTax: Decimal | undefined;
  readonly wholesale: Compared;
  readonly labour: Compared; // planned: the labour money in the price; actual: the time taken at the wage cost
  readonly minutes: Compared; // planned: bench minutes, not the minutes the labour money would pay for
  readonly leftAfterGoods: Compared;
  readonly leftAfterLabour: Compared;
}

/** Percent, of the ex-tax price (margin) and of the cost (markup). The same for one piece as for all. */
export interface Rates {
  readonly margin: Compared;
  readonly markup: Compared;
}

export const figuresOf = (exTax: Decimal | undefined, wholesale: Compared, labour: Compared, minutes: Compared): ReviewFigures => {
  const income = compared(exTax, exTax);
  return {
    exTax,
    wholesale,
    labour,
    minutes,
    leftAfterGoods: comparedBy([income, wholesale], (price = zero, goods = zero) => price.minus(goods)),
    leftAfterLabour: comparedBy([income, wholesale, labour], (price = zero, goods = zero, wages = zero) => price.minus(goods).minus(wages)),
  };
};

export const ratesOf = (exTax: Decimal | undefined, costs: readonly Compared[]): Rates => {
  const income = compared(exTax, exTax);
  return {
    margin: comparedBy([income, ...costs], (price = zero, ...cost) => marginOf(price, sum(cost))),
    markup: comparedBy([income, ...costs], (price = zero, ...cost) => markupOf(price, sum(cost))),
  };
};

/** The same for one of this many pieces; nothing is known of one of none. */
export const dividedBy = ({ exTax, wholesale, labour, minutes }: ReviewFigures, pieces: number): ReviewFigures => {
  const each = (of: Compared): Compared =>
    pieces > 0 ? comparedBy([of], (all = zero) => all.dividedBy(pieces)) : compared(undefined, undefined);
  return figuresOf(pieces > 0 ? exTax?.dividedBy(pieces) : undefined, each(wholesale), each(labour), each(minutes));
};

/** The figures in whole coins, half up, with what is left and over worked out from the coins, so that every column and row adds up as printed. */
export const inCoins = (figures: ReviewFigures, currency: string, plan?: Pick<Parts, 'exTax' | 'wholesale' | 'labour'>): ReviewFigures => {
  const coins = (amount: Decimal | undefined): Decimal | undefined => amount && toCoin(amount, currency);
  const both = (of: Compared, printed: Decimal | undefined): Compared =>
    compared(of.planned === undefined ? undefined : (printed ?? coins(of.planned)), coins(of.actual));
  const exTax = figures.exTax === undefined ? undefined : (plan?.exTax ?? coins(figures.exTax));
  return figuresOf(exTax, both(figures.wholesale, plan?.wholesale), both(figures.labour, plan?.labour), figures.minutes);
};
