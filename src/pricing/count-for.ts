// "How many at 25 for 600": whole pieces inside a budget. A budget is what the client hands over, so tax on top must fit in it too.

import { type Decimal, zero } from '../values/decimal.ts';
import { fixedMoney } from '../values/money.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { amountProblem } from './check-order.ts';
import { clientPays } from './ex-tax.ts';
import type { PriceLine } from './order.ts';
import { chainRules, priceOrder } from './price-order.ts';
import type { PriceTerms } from './price-terms.ts';

export interface CountFor {
  readonly count: number;
  readonly total: Decimal; // what the client pays for that many
  readonly left: Decimal; // of the budget
}

const totalOf = (line: Pick<PriceLine, 'piece' | 'material'>, count: number, each: Decimal, terms: PriceTerms): Result<Decimal> => {
  if (count === 0) return ok(zero);
  const priced = priceOrder({ lines: [{ ...line, count, price: { amount: each, per: 'each' } }] }, terms);
  return priced.ok ? ok(priced.value.all.printed.price) : priced;
};

/** The most whole pieces at this quoted price that the budget pays for. Fails when it doesn't pay for one. */
export const countFor = (
  budget: Decimal,
  each: Decimal,
  line: Pick<PriceLine, 'piece' | 'material'>,
  terms: PriceTerms,
): Result<CountFor> => {
  const wrong = amountProblem(budget, terms.currency) ?? amountProblem(each, terms.currency);
  if (wrong) return { ok: false, problem: wrong };
  const rules = chainRules(line, terms);
  const paidEach = clientPays(each, rules.taxRate, rules.basis);
  let count = budget.dividedBy(paidEach).floor().toNumber() + 1; // one more: the tax of many may round down
  let total = totalOf(line, count, each, terms);
  while (total.ok && total.value.greaterThan(budget)) {
    count -= 1;
    total = totalOf(line, count, each, terms);
  }
  if (!total.ok) return total;
  if (count === 0) {
    return failed('budget-below-one-piece', { budget: fixedMoney(budget, terms.currency), each: fixedMoney(paidEach, terms.currency) });
  }
  return ok({ count, total: total.value, left: budget.minus(total.value) });
};
