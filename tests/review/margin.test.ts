// Margin and markup by published examples. The two are different shares of the same profit.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { marginOf, markupOf } from '../../src/review/margin.ts';
import { decimal } from '../../src/values/decimal.ts';
import { roundTo } from '../../src/values/rounding.ts';

const shown = (amount: ReturnType<typeof marginOf>, places = 2): string | undefined =>
  amount && roundTo(amount, places, 'half up').toFixed(places);

describe('published', () => {
  // Markups vs margins, B. Moyer (Penn State Extension), Fruit Growers News, 15 May 2024: 30 % on a cost of 5 is 6.50, a profit of 1.50, a margin of 23 %;
  // on a cost of 1 it is 1.30 and 23 % too. (Its 1.44 for a 30 % margin on 1 is a misprint for 1.43 and is not used.)
  test.each([
    ['5', '6.50'],
    ['1', '1.30'],
  ])('30 %% markup on %s is %s, a margin of 23 %%', (cost, price) => {
    expect(shown(marginOf(decimal(price), decimal(cost)), 0)).toBe('23');
    expect(shown(markupOf(decimal(price), decimal(cost)), 0)).toBe('30');
  });

  // Pricing strategies, Cornell Northeast Beginning Farmers Project: cost 5 at a margin of 30 %.
  test('a 30 % margin on a cost of 5 is 7.14', () => expect(shown(marginOf(decimal('7.14'), decimal(5)), 0)).toBe('30'));

  // Farm Business, 8 July 2014: cost 8, price 10. Profit margin versus mark-up, Skillmaker, 2018: cost 5, price 10.
  test.each([
    ['8', '10', '25', '20'],
    ['5', '10', '100', '50'],
  ])('cost %s, price %s: markup %s, margin %s', (cost, price, markup, margin) => {
    expect(shown(markupOf(decimal(price), decimal(cost)), 0)).toBe(markup);
    expect(shown(marginOf(decimal(price), decimal(cost)), 0)).toBe(margin);
  });
});

test('margin is markup over one plus markup, always the smaller of the two on a profit', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), fc.integer({ min: 1, max: 1_000_000 }), (cents, profit) => {
      const cost = decimal(cents).div(100);
      const price = cost.plus(decimal(profit).div(100));
      const [margin = decimal('NaN'), markup = decimal('NaN')] = [marginOf(price, cost), markupOf(price, cost)];
      expect(margin.lessThan(markup)).toBe(true);
      expect(
        margin
          .minus(markup.times(100).div(markup.plus(100)))
          .abs()
          .lessThan('1e-20'),
      ).toBe(true);
    }),
  );
});

test('no share of nothing', () => {
  expect(marginOf(decimal(0), decimal(5))).toBeUndefined();
  expect(markupOf(decimal(5), decimal(0))).toBeUndefined();
});
