// From cost to price: published markups, margins and floristry examples, then the step and the minimum.

import { describe, expect, it } from 'vitest';
import { labourOfExTax } from '../../src/pricing/labour-share.ts';
import { priceForStems, quotedForCost } from '../../src/pricing/price-for.ts';
import { chainRules } from '../../src/pricing/price-order.ts';
import { decimal } from '../../src/values/decimal.ts';
import { fromStudio } from '../../src/values/known.ts';
import { type Case, terms } from './terms-for-tests.ts';

const buttonhole = { piece: 'buttonhole' } as const;

const price = (stems: string, sundries: string, given: Case): string =>
  quotedForCost(decimal(stems), decimal(sundries), chainRules(buttonhole, terms(given))).toFixed(2);

describe('markup on cost is labour on product at a multiple of one', () => {
  const markup = (cost: string, percent: string) => price(cost, '0', { basis: 'none', share: percent, stems: '1' });

  it.each([
    // Markups vs margins, B. Moyer (Penn State Extension), Fruit Growers News, 15 May 2024
    ['5', '30', '6.50'],
    ['1', '30', '1.30'],
    ['50', '30', '65.00'],
    // excerpt on the topic of Pricing for Profit, Iowa State Extension 2008 (secondary)
    ['2', '50', '3.00'],
    // Mark-up and margins to set prices, M. Cannella, UVM Extension, 2013: 18 %
    ['0.80', '18', '0.94'],
    ['0.70', '18', '0.83'],
    ['1.20', '18', '1.42'],
    ['2.40', '18', '2.83'],
    ['4.30', '18', '5.07'],
    ['4.80', '18', '5.66'],
    // http://farmbusiness.blogspot.com/, 8 July 2014
    ['8', '25', '10.00'],
    // Profit margin versus mark-up, Skillmaker, 2018
    ['5', '100', '10.00'],
    // The Mathematics of Money, ch 8, McGraw-Hill (question; answer derived)
    ['14.95', '40', '20.93'],
    ['375', '20', '450.00'],
    // Ratio, proportion and percentages 3.3.1, Open University: two steps in one, 76 × 1.175 × 1.15 (one factor 1.35125)
    ['76', '35.125', '102.70'],
  ])('cost %s and %s %% sells at %s', (cost, percent, expected) => {
    expect(markup(cost, percent)).toBe(expected);
  });

  it.each([
    // the same Penn State page: 30 % markup is a margin of 23 %
    ['30', '23.08'],
    // http://farmbusiness.blogspot.com/ and Skillmaker 2018
    ['25', '20.00'],
    ['100', '50.00'],
    // Realistic pricing: 20 % of materials is 16.67 % of the price (derived)
    ['20', '16.67'],
  ])('%s %% on product is %s %% of the price', (share, ofPrice) => {
    expect(labourOfExTax({ rule: 'on product', share: decimal(share) }).toFixed(2)).toBe(ofPrice);
  });
});

describe('a margin is labour out of the price', () => {
  it.each([
    // Pricing strategies, Cornell Northeast Beginning Farmers
    ['5', '30', '7.14'],
    // excerpt on the topic of Pricing for Profit, Iowa State Extension 2008 (secondary)
    ['2', '35', '3.08'],
    ['8', '20', '10.00'],
    // 20 % of the selling price over materials of 41.25 (derived; the digest of floristtrends.com gives the rule)
    ['41.25', '20', '51.56'],
    // 25 of a 100 arrangement is labour, J. Guggia, flowerchat.com
    ['75', '25', '100.00'],
  ])('cost %s and %s %% of the price is %s', (cost, percent, expected) => {
    expect(price(cost, '0', { basis: 'none', share: percent, stems: '1', rule: 'out of the price' })).toBe(expected);
  });
});

describe('floristry examples', () => {
  it.each([
    // Florists' Review, January 2023, p 61: flowers 10 × 3.5, vase 2.50 × 2.5, labour 20 % of both
    ['10', '2.50', { share: '20', stems: '3.5', sundriesMultiple: '2.5' }, '49.50'],
    // Florists' Review, 4 October 1917 (scan text): plant 1.00 × 3, basket 0.50 × 2
    ['1.00', '0.50', { share: '0', stems: '3', sundriesMultiple: '2' }, '4.00'],
    // Terms to know, school deck (Interstate): 10 carnations at .30, 10 leatherleaf at .10, vase .90 and preservative .05; 3:1 and 2:1
    ['4.00', '0.95', { share: '0', stems: '3', sundriesMultiple: '2' }, '13.90'],
    // the same goods at a flat 3:1 (derived)
    ['4.00', '0.95', { share: '0', stems: '3', sundriesMultiple: '3' }, '14.85'],
    // What it costs, zuzuspetalsaustin.com: a bridal bouquet, goods already at retail, labour 25 %
    ['228.48', '6.83', { share: '25', stems: '1', sundriesMultiple: '1' }, '294.14'],
    // nbuflowers.com, bouquet price: roses 12 × 3.5, supplies 6 × 2, 20 %
    ['12', '6', { share: '20', stems: '3.5', sundriesMultiple: '2' }, '64.80'],
    // Ticketing and pricing, TAFE NSW Certificate II Floristry: a 150 % markup is × 2.5, then 10 % GST (figure derived: 10 -> 25 -> 27.50)
    ['10', '0', { share: '0', stems: '2.5', rate: '10', basis: 'included' }, '27.50'],
    // carnation 0.35 × 3.5, florist20.com/community/threads/how-do-you-set-your-prices.11202; binary floats give 1.22
    ['0.35', '0', { share: '0', stems: '3.5' }, '1.23'],
  ] as [string, string, Case, string][])('stems %s, sundries %s, %o: %s', (stems, sundries, given, expected) => {
    expect(price(stems, sundries, { basis: 'none', ...given })).toBe(expected);
  });
});

describe('the price to ask', () => {
  const asked = (stems: string, changes: Case & { step?: string; minimum?: string }) => {
    const { step, minimum, ...given } = changes;
    const result = priceForStems(buttonhole, decimal(stems), {
      ...terms(given),
      priceStep: fromStudio(decimal(step ?? '0.50')),
      minimumPrice: () => (minimum === undefined ? undefined : fromStudio(decimal(minimum))),
    });
    if (!result.ok) throw new Error(result.problem.code);
    return result.value;
  };

  it('goes up to the step', () => {
    // 3.20 × 4 × 1.3 × 1.2 = 19.968 (derived)
    expect(['0.01', '0.50', '1', '5'].map((step) => asked('3.20', { rate: '20', step }).price.toString())).toEqual([
      '19.97',
      '20',
      '20',
      '20',
    ]);
    expect(asked('3.25', { rate: '20' }).price.toString()).toBe('20.5');
  });

  it('stays on a step it already meets', () =>
    expect(asked('10', { basis: 'none', share: '20', stems: '3.5', sundriesMultiple: '2.5', sundries: '2.50' }).price.toString()).toBe(
      '49.5',
    ));

  it('goes up to a coin where the step is finer', () => {
    expect(asked('20.1', { basis: 'none', share: '0', stems: '1', step: '0.125' }).price.toString()).toBe('20.13');
  });

  it('is never under the minimum for the kind, and says so', () => {
    expect(asked('1', { rate: '20', minimum: '18' })).toMatchObject({ price: decimal('18'), raisedToMinimum: decimal('18') });
    expect(asked('5', { rate: '20', minimum: '18' }).raisedToMinimum).toBeUndefined();
  });

  it.each(['-1', '0', 'Infinity', '1e30'])('refuses stems of %s', (stems) => {
    expect(priceForStems(buttonhole, decimal(stems), terms()).ok).toBe(false);
  });
});
