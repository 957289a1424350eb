// What a florist does in the head: percentages taken off one after the other. Shown beside the exact figure because it is not
// the inverse of the forward rule, and the gap grows with the tax rate. Common practice, no source.

import { type Decimal, hundred } from '../values/decimal.ts';
import type { ChainRules } from './stem-budget.ts';

const less = (amount: Decimal, percent: Decimal): Decimal => amount.times(hundred.minus(percent)).dividedBy(hundred);

export interface HeadMaths {
  readonly afterTax: Decimal;
  readonly labour: Decimal;
  readonly afterLabour: Decimal;
  readonly wholesale: Decimal;
}

/** 25 less 20 %, less 30 %, over 4 is 3.50. Tax is only taken off where the price includes it; one multiple serves for everything. */
export const headMaths = (quoted: Decimal, rules: ChainRules): HeadMaths => {
  const afterTax = rules.basis === 'included' ? less(quoted, rules.taxRate) : quoted;
  const afterLabour = less(afterTax, rules.labour.share);
  return {
    afterTax,
    labour: afterTax.minus(afterLabour),
    afterLabour,
    wholesale: afterLabour.dividedBy(rules.stemsMultiple),
  };
};
