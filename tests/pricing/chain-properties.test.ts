// What must hold for every price: the chain equals exact fractions, goes there and back, and a higher price never leaves less for stems.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quotedForCost } from '../../src/pricing/price-for.ts';
import { type ChainRules, partsOf } from '../../src/pricing/stem-budget.ts';
import { type Decimal, decimal } from '../../src/values/decimal.ts';
import { cents, digits, minus, over, plus, type Rational, rational, times } from './rational.ts';
import { at, priced } from './terms-for-tests.ts';

/** Whole-number settings: hundredths of money, thousandths of rates, hundredths of multiples. */
const settings = fc.record({
  price: fc.integer({ min: 1000, max: 5_000_000 }),
  rate: fc.constantFrom(0, 5000, 7000, 9000, 10_000, 13_000, 13_500, 14_975, 15_000, 19_000, 20_000, 23_000),
  basis: fc.constantFrom('included', 'on top') as fc.Arbitrary<'included' | 'on top'>,
  rule: fc.constantFrom('on product', 'out of the price') as fc.Arbitrary<'on product' | 'out of the price'>,
  share: fc.integer({ min: 0, max: 60_000 }),
  stems: fc.integer({ min: 100, max: 600 }),
  sundriesMultiple: fc.integer({ min: 100, max: 600 }),
  sundries: fc.integer({ min: 0, max: 50 }),
  count: fc.integer({ min: 1, max: 300 }),
});
type Settings = typeof settings extends fc.Arbitrary<infer S> ? S : never;

const rulesOf = (s: Settings): ChainRules => ({
  taxRate: decimal(s.rate).dividedBy(1000),
  basis: s.basis,
  labour: { rule: s.rule, share: decimal(s.share).dividedBy(1000) },
  stemsMultiple: decimal(s.stems).dividedBy(100),
  sundriesMultiple: decimal(s.sundriesMultiple).dividedBy(100),
});
const money = (hundredths: number): Decimal => decimal(hundredths).dividedBy(100);

const hundred = rational(100);
const chainOf = (s: Settings) => {
  const price = rational(s.price, 100);
  const rate = rational(s.rate, 1000);
  const share = rational(s.share, 1000);
  const exTax = s.basis === 'included' ? over(times(price, hundred), plus(hundred, rate)) : price;
  const product =
    s.rule === 'on product' ? over(times(exTax, hundred), plus(hundred, share)) : over(times(exTax, minus(hundred, share)), hundred);
  const sundries = rational(s.sundries, 100);
  const stems = over(minus(product, times(rational(s.sundriesMultiple, 100), sundries)), rational(s.stems, 100));
  return { exTax, labour: minus(exTax, product), product, wholesale: plus(stems, sundries), stems };
};

const asCents = (amount: Decimal): bigint => BigInt(amount.times(100).toFixed(0));
const cut = (amount: Decimal): string => amount.toDecimalPlaces(20, 1).toFixed(20);

describe('the chain beside exact fractions', () => {
  it('gives the same twenty decimals at every step', () => {
    fc.assert(
      fc.property(settings, (s) => {
        const ours = partsOf(money(s.price), money(s.sundries), rulesOf(s));
        const exact = chainOf(s);
        for (const part of ['exTax', 'labour', 'product', 'wholesale', 'stems'] as const) {
          // a digit beyond the kept ones settles 0.1999…9 against 0.2
          const difference = decimal(digits(exact[part], 30)).minus(ours[part]).abs();
          expect([part, difference.lessThan('1e-25')]).toEqual([part, true]);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('prints tax, wholesale and the price before tax of the whole order as the fractions round', () => {
    fc.assert(
      fc.property(settings, (s) => {
        const given = {
          rate: rulesOf(s).taxRate.toString(),
          basis: s.basis,
          rule: s.rule,
          share: rulesOf(s).labour.share.toString(),
          stems: rulesOf(s).stemsMultiple.toString(),
          sundriesMultiple: rulesOf(s).sundriesMultiple.toString(),
          sundries: '0',
        };
        const { printed } = priced(at(money(s.price).toString(), s.count), given).all;
        const all = (part: Rational) => cents(times(part, rational(s.count)));
        const { exTax, wholesale } = chainOf({ ...s, sundries: 0 });
        const price = rational(s.price, 100);
        const tax = s.basis === 'included' ? minus(price, exTax) : over(times(price, rational(s.rate, 1000)), hundred);
        expect([asCents(printed.tax), asCents(printed.wholesale)]).toEqual([all(tax), all(wholesale)]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('there and back', () => {
  it('forward of backward is the price, before any step', () => {
    fc.assert(
      fc.property(settings, (s) => {
        const rules = rulesOf(s);
        const { stems, sundries } = partsOf(money(s.price), money(s.sundries), rules);
        expect(cut(quotedForCost(stems, sundries, rules).plus('1e-25'))).toBe(cut(money(s.price)));
      }),
      { numRuns: 1000 },
    );
  });

  it('backward of forward is what went in', () => {
    fc.assert(
      fc.property(settings, fc.integer({ min: 1, max: 100_000 }), (s, stems) => {
        const rules = rulesOf(s);
        const back = partsOf(quotedForCost(money(stems), money(s.sundries), rules), money(s.sundries), rules);
        expect(cut(back.stems.plus('1e-25'))).toBe(cut(money(stems)));
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a higher price', () => {
  it('never leaves less for stems, exactly or as printed', () => {
    fc.assert(
      fc.property(settings, fc.integer({ min: 1, max: 500 }), (s, more) => {
        const given = {
          rate: rulesOf(s).taxRate.toString(),
          basis: s.basis,
          rule: s.rule,
          share: rulesOf(s).labour.share.toString(),
          sundries: money(Math.min(s.sundries, 20)).toString(),
        };
        const low = priced(at(money(s.price).toString(), s.count), given);
        const high = priced(at(money(s.price + more).toString(), s.count), given);
        expect(high.all.exact.stems.greaterThan(low.all.exact.stems)).toBe(true);
        expect(high.all.printed.stems.greaterThanOrEqualTo(low.all.printed.stems)).toBe(true);
        expect(high.lines[0]?.each.printed.stems.greaterThanOrEqualTo(low.lines[0]?.each.printed.stems ?? 0)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
