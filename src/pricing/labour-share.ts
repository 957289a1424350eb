// The two rules florists use for labour, never mixed: a share on top of the product, or a share out of the price.
// 30 % on product is 23.1 % of the ex-tax price, so both figures are shown.

import { type Decimal, hundred } from '../values/decimal.ts';

export type LabourRule = 'on product' | 'out of the price';
export const labourRules: readonly LabourRule[] = ['on product', 'out of the price'];

export interface Labour {
  readonly rule: LabourRule;
  readonly share: Decimal; // percent
}

/** What is left of the ex-tax price for product when labour is taken out. */
export const productOf = (exTax: Decimal, { rule, share }: Labour): Decimal =>
  rule === 'on product' ? exTax.times(hundred).dividedBy(share.plus(hundred)) : exTax.times(hundred.minus(share)).dividedBy(hundred);

/** Labour money in the ex-tax price. */
export const labourOf = (exTax: Decimal, { rule, share }: Labour): Decimal =>
  exTax.times(share).dividedBy(rule === 'on product' ? share.plus(hundred) : hundred);

/** The ex-tax price whose product this is: the inverse of `productOf`. */
export const exTaxForProduct = (product: Decimal, { rule, share }: Labour): Decimal =>
  rule === 'on product' ? product.times(share.plus(hundred)).dividedBy(hundred) : product.times(hundred).dividedBy(hundred.minus(share));

/** The ex-tax price whose labour this is. The share must be above zero. */
export const exTaxForLabour = (labour: Decimal, { rule, share }: Labour): Decimal =>
  labour.times(rule === 'on product' ? share.plus(hundred) : hundred).dividedBy(share);

/** Labour as a percentage of the ex-tax price, whichever the rule. */
export const labourOfExTax = ({ rule, share }: Labour): Decimal =>
  rule === 'on product' ? share.times(hundred).dividedBy(share.plus(hundred)) : share;
