// Forward: from what goes into a piece to the price to ask, by the inverse of the same rules, then up to the studio's price step
// and never under its minimum for the kind. Up and not to the nearest, so that a worked-out price never eats the stems it was worked out from.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Decimal } from '../values/decimal.ts';
import { smallestCoin, toCoin } from '../values/money.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { upToStep } from '../values/rounding.ts';
import { sundriesProblem } from './check-order.ts';
import { quotedFor } from './ex-tax.ts';
import { exTaxForProduct } from './labour-share.ts';
import type { PriceLine } from './order.ts';
import { chainRules, rulesOutOfRange } from './price-order.ts';
import type { PriceTerms } from './price-terms.ts';
import type { ChainRules } from './stem-budget.ts';

/** The quoted price, exact, that leaves this for stems beside these sundries. The inverse of `partsOf`. */
export const quotedForCost = (stems: Decimal, sundries: Decimal, rules: ChainRules): Decimal => {
  const product = rules.stemsMultiple.times(stems).plus(rules.sundriesMultiple.times(sundries));
  return quotedFor(exTaxForProduct(product, rules.labour), rules.taxRate, rules.basis);
};

export interface WorkedOutPrice {
  readonly exact: Decimal; // as quoted, before any rounding
  readonly price: Decimal; // as quoted: up to the step, and to the minimum
  readonly step: Decimal;
  readonly raisedToMinimum?: Decimal; // the studio's minimum for this kind, where it was above
}

/** An exact quoted price as the studio would ask it. */
export const askedPrice = (exact: Decimal, piece: PieceKind, terms: PriceTerms): WorkedOutPrice => {
  const step = terms.priceStep.value.greaterThan(0) ? terms.priceStep.value : smallestCoin(terms.currency);
  const price = toCoin(upToStep(exact, step), terms.currency, 'up');
  const minimum = terms.minimumPrice(piece)?.value;
  if (minimum?.greaterThan(price)) return { exact, price: minimum, step, raisedToMinimum: minimum };
  return { exact, price, step };
};

/** "What must I charge to keep 3.20 for stems": the price for one piece, with the studio's sundries for its kind on top. */
export const priceForStems = (
  line: Pick<PriceLine, 'piece' | 'material'>,
  stems: Decimal,
  terms: PriceTerms,
  sundries: Decimal = terms.sundriesEach(line.piece).value,
): Result<WorkedOutPrice> => {
  const rules = chainRules(line, terms);
  const wrong = rulesOutOfRange(rules) ?? sundriesProblem(sundries);
  if (wrong) return { ok: false, problem: wrong };
  if (!stems.isFinite() || stems.greaterThan('1e12')) return failed('price-too-large', { amount: stems.toString() });
  if (stems.isNegative() || stems.plus(sundries).lessThanOrEqualTo(0)) return failed('price-not-positive', { amount: stems.toString() });
  return ok(askedPrice(quotedForCost(stems, sundries, rules), line.piece, terms));
};
