// Terms of an invented studio, changed where a case needs it.

import { ownFigure } from '../../src/handbook/tax-sources.ts';
import type { Order } from '../../src/pricing/order.ts';
import { type PricedOrder, priceOrder } from '../../src/pricing/price-order.ts';
import type { PriceTerms } from '../../src/pricing/price-terms.ts';
import type { TaxTerms } from '../../src/pricing/tax-terms.ts';
import { decimal, zero } from '../../src/values/decimal.ts';
import { fromStudio } from '../../src/values/known.ts';
import type { Result } from '../../src/values/result.ts';
import type { RoundingRule } from '../../src/values/rounding.ts';

export interface Case {
  readonly currency?: string;
  readonly rate?: string;
  readonly parts?: readonly (readonly [string, string])[];
  readonly basis?: 'included' | 'on top' | 'none';
  readonly rounding?: RoundingRule;
  readonly level?: 'invoice' | 'line';
  readonly rule?: 'on product' | 'out of the price';
  readonly share?: string;
  readonly stems?: string;
  readonly sundriesMultiple?: string;
  readonly sundries?: string;
}

export const taxTerms = (given: Case = {}): TaxTerms => {
  const rate = decimal(given.rate ?? '10');
  const none = given.basis === 'none';
  return {
    regime: 'own',
    name: 'tax',
    rate: fromStudio(none ? zero : rate),
    parts: none ? [] : (given.parts ?? [['tax', rate.toString()] as const]).map(([name, part]) => ({ name, rate: decimal(part) })),
    basis: fromStudio(given.basis ?? 'included'),
    rounding: given.rounding ?? 'half up',
    level: fromStudio(given.level ?? 'invoice'),
    cashHalf: 'up',
    source: ownFigure,
    changes: [],
  };
};

export const terms = (given: Case = {}): PriceTerms => ({
  currency: given.currency ?? 'AUD',
  tax: taxTerms(given),
  labour: { rule: fromStudio(given.rule ?? 'on product'), share: fromStudio(decimal(given.share ?? '30')) },
  multiples: {
    stems: fromStudio(decimal(given.stems ?? '4')),
    sundries: fromStudio(decimal(given.sundriesMultiple ?? given.stems ?? '4')),
  },
  sundriesEach: () => fromStudio(decimal(given.sundries ?? '0')),
  minimumPrice: () => undefined,
  minutesEach: () => undefined,
  priceStep: fromStudio(decimal('0.50')),
  overrides: [],
});

/** `count` buttonholes at `each`. */
export const at = (each: string, count = 1): Order => ({
  lines: [{ piece: 'buttonhole', count }],
  price: { amount: decimal(each), per: 'each' },
});

/** Prices an order that must be priceable. */
export const priced = (order: Order, given: Case = {}): PricedOrder => {
  const result: Result<PricedOrder> = priceOrder(order, terms(given));
  if (!result.ok) throw new Error(`not priced: ${JSON.stringify(result.problem)}`);
  return result.value;
};
