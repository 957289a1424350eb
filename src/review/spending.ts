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

const plants = /\b(stems?|flowers?|foliage|plants?|market|wholesalers?)\b/i;

/** What the money went on: the item, else what the words put after "on" or "for". Plants and sundries in one breath are plants. */
const onSundries = ({ item, words }: FactOf<'actual'>): boolean => {
  const about = item ?? /\b(?:on|for)\b(.*)/is.exec(words)?.[1] ?? '';
  return soundsLikeSundry(about) && !plants.test(about);
};

/** `sundries`: planned for the whole order. Undefined while no spending on plants is recorded. */
export const spendingOf = (actuals: readonly FactOf<'actual'>[], sundries: Decimal, spentOn: SpentOn): Spending | undefined => {
  const spent = actuals.flatMap((fact) =>
    fact.what === 'spent' && fact.amount !== undefined ? [{ amount: decimal(fact.amount), sundry: onSundries(fact) }] : [],
  );
  const total = (sundry: boolean): Decimal => sum(spent.filter((one) => one.sundry === sundry).map(({ amount }) => amount));
  if (!spent.some(({ sundry }) => !sundry)) return undefined;
  if (spent.some(({ sundry }) => sundry)) return { stems: total(false), sundries: total(true), sundriesFrom: 'recorded' };
  if (spentOn === 'stems') return { stems: total(false), sundries, sundriesFrom: 'planned' };
  const inIt = sundries.greaterThan(total(false)) ? total(false) : sundries;
  return { stems: total(false).minus(inIt), sundries: inIt, sundriesFrom: 'in the spending' };
};
