// Backward: from a quoted price to the money left for stems. Linear, so it serves one piece and a whole line alike. Exact to the end.

import { type Decimal, decimal, zero } from '../values/decimal.ts';
import { clientPays, exTaxOf, taxOf } from './ex-tax.ts';
import { type Labour, labourOf, productOf } from './labour-share.ts';
import type { Parts } from './parts.ts';
import type { TaxBasis } from './tax-terms.ts';

/** Everything the chain needs for one kind of piece, as plain figures. */
export interface ChainRules {
  readonly taxRate: Decimal; // percent
  readonly basis: TaxBasis;
  readonly labour: Labour;
  readonly stemsMultiple: Decimal;
  readonly sundriesMultiple: Decimal;
}

const noise = decimal('1e-25'); // of divisions

/** The parts of a quoted amount that must also pay for `sundries`. `stems` is negative when the sundries alone use it up. */
export const partsOf = (quoted: Decimal, sundries: Decimal, rules: ChainRules): Parts => {
  const exTax = exTaxOf(quoted, rules.taxRate, rules.basis);
  const product = productOf(exTax, rules.labour);
  const left = product.minus(rules.sundriesMultiple.times(sundries)).dividedBy(rules.stemsMultiple);
  const stems = left.abs().lessThan(noise) ? zero : left; // sundries that use up the price to the penny leave nothing, not less
  return {
    price: clientPays(quoted, rules.taxRate, rules.basis),
    tax: taxOf(quoted, rules.taxRate, rules.taxRate, rules.basis),
    exTax,
    labour: labourOf(exTax, rules.labour),
    product,
    wholesale: stems.plus(sundries),
    sundries,
    stems,
  };
};
