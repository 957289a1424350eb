// Taking the tax out of a price that includes it, and putting it on one that doesn't. Exact: rounding is the printing's business.

import { type Decimal, hundred, zero } from '../values/decimal.ts';
import type { TaxBasis } from './tax-terms.ts';

/** Ex-tax money in a quoted amount: P·100/(100+t) when the tax is in it, P itself when it comes on top or there is none. */
export const exTaxOf = (quoted: Decimal, rate: Decimal, basis: TaxBasis): Decimal =>
  basis === 'included' ? quoted.times(hundred).dividedBy(rate.plus(hundred)) : quoted;

/** The tax on a quoted amount at one rate, `whole` being all rates together: P·r/(100+t) inside, P·r/100 on top. */
export const taxOf = (quoted: Decimal, rate: Decimal, whole: Decimal, basis: TaxBasis): Decimal => {
  if (basis === 'none') return zero;
  return quoted.times(rate).dividedBy(basis === 'included' ? whole.plus(hundred) : hundred);
};

/** What is quoted for this ex-tax money: the inverse of `exTaxOf`. */
export const quotedFor = (exTax: Decimal, rate: Decimal, basis: TaxBasis): Decimal =>
  basis === 'included' ? exTax.times(rate.plus(hundred)).dividedBy(hundred) : exTax;

/** What the client hands over for a quoted amount. */
export const clientPays = (quoted: Decimal, rate: Decimal, basis: TaxBasis): Decimal =>
  basis === 'on top' ? quoted.times(rate.plus(hundred)).dividedBy(hundred) : quoted;
