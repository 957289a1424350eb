// What was spent, from what the thread was told. Money for ribbon, wire and the like is kept apart where the words name it.

import { soundsLikeSundry } from '../handbook/roles.ts';
import type { FactOf } from '../reading/fact.ts';
import { type Decimal, decimal, sum } from '../values/decimal.ts';

/** What a bare "spent 182.40" paid for: the plants, or everything bought for the event. */
export type SpentOn = 'stems' | 'everything';

export type SundriesFrom =
  | 'recorded' // some of the spending names a sundry
  | 'planned' // none does: the studio's usual sundries are added, and the reply says so
  | 'in the spending';

/** Money before any tax that is claimed back, taken as typed. Undefined where nothing was said. */
export interface Spending {
  readonly stems: Decimal;
  readonly sundries: Decimal;
  readonly sundriesFrom: SundriesFrom;
}

/** `sundries`: planned for the whole order. Undefined while no spending on plants is recorded. */
export const spendingOf = (actuals: readonly FactOf<'actual'>[], sundries: Decimal, spentOn: SpentOn): Spending | undefined => {
  const spent = actuals.flatMap(({ what, amount, item }) =>
    what === 'spent' && amount !== undefined ? [{ amount: decimal(amount), sundry: item !== undefined && soundsLikeSundry(item) }] : [],
  );
  const total = (sundry: boolean): Decimal => sum(spent.filter((one) => one.sundry === sundry).map(({ amount }) => amount));
  if (!spent.some(({ sundry }) => !sundry)) return undefined;
  if (spent.some(({ sundry }) => sundry)) return { stems: total(false), sundries: total(true), sundriesFrom: 'recorded' };
  if (spentOn === 'stems') return { stems: total(false), sundries, sundriesFrom: 'planned' };
  const inIt = sundries.greaterThan(total(false)) ? total(false) : sundries;
  return { stems: total(false).minus(inIt), sundries: inIt, sundriesFrom: 'in the spending' };
};
