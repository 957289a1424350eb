// Sharing a total in whole coins: published splits, an election of 1790, and an independent money library.

import { dinero, allocate as theirs, toSnapshot } from 'dinero.js';
import { USD } from 'dinero.js/currencies';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate } from '../../src/values/allocate.ts';
import { decimal, sum } from '../../src/values/decimal.ts';

const shares = (total: string, weights: readonly (string | number)[], coin = '0.01', caps?: readonly string[]): string =>
  allocate(decimal(total), weights.map(decimal), decimal(coin), caps?.map(decimal))
    .map((share) => share.toString())
    .join(' ');

describe('published splits', () => {
  it.each([
    // Allocation, moneyphp documentation, https://github.com/moneyphp/money/blob/122664c2621a95180a13c1ac81fea1d2ef20781e/doc/features/allocation.rst
    ['0.05', [70, 30], '0.04 0.01'],
    ['0.05', [30, 70], '0.02 0.03'],
    ['8.00', [1, 1, 1], '2.67 2.67 2.66'],
    // dinero.js discussion 423, https://www.github.com/dinerojs/dinero.js/discussions/423
    ['519.98', [1, 1, 1, 1, 1, 1, 1, 1, 1, 1], '52 52 52 52 52 52 52 52 51.99 51.99'],
    // allocate, dinero.js documentation (ratios from the page, shares derived)
    ['1000.03', [50, 50], '500.02 500.01'],
    // Largest remainder, https://infinitelexicon.com/largestremainder (quotas 3.5, 2.1, 1.4)
    ['0.07', [50, 30, 20], '0.04 0.02 0.01'],
    // derived: largest remainder, where "first listed gets the spare" would give 17 17 66 all the same, and 2 1 7
    ['1.00', [1, 1, 4], '0.17 0.17 0.66'],
    ['0.10', [11, 11, 78], '0.01 0.01 0.08'],
  ] as [string, number[], string][])('%s by %o is %s', (total, weights, expected) => {
    expect(shares(total, weights)).toBe(expected);
  });

  it('seats the United States House of 1790 (60 seats, census populations)', () => {
    // Hamilton method, electowiki, https://electowiki.org/w/index.php?title=Hamilton_method&oldid=9372
    const states = {
      VA: 630560,
      MA: 475327,
      PA: 432879,
      NC: 353523,
      NY: 331589,
      MD: 278514,
      CT: 236841,
      SC: 206236,
      NJ: 179570,
      NH: 141822,
      VT: 85533,
      GA: 70835,
      KY: 68705,
      RI: 68446,
      DE: 55540,
    };
    expect(shares('60', Object.values(states), '1')).toBe('11 8 7 6 6 5 4 3 3 2 1 1 1 1 1');
  });
});

describe('the edges', () => {
  it('gives a weight of zero nothing, not even a spare coin', () => {
    // dinero.js discussion 423
    expect(shares('0.05', [0, 1, 0, 1])).toBe('0 0.03 0 0.02');
  });
  it('shares a negative total as the positive one', () => expect(shares('-8.00', [1, 1, 1])).toBe('-2.67 -2.67 -2.66'));
  it('shares nothing to anyone', () => expect(shares('0', [0, 0])).toBe('0 0'));
  it('works in yen and fils', () =>
    expect([shares('100', [1, 2], '1'), shares('0.100', [1, 2], '0.001')]).toEqual(['33 67', '0.033 0.067']));
  it('keeps a part below its cap', () => expect(shares('0.10', [5, 5], '0.01', ['0.03', '0.10'])).toBe('0.03 0.07'));
  it('gives a zero weight a coin only when the others are full', () =>
    expect(shares('0.10', [1, 0], '0.01', ['0.08', '0.10'])).toBe('0.08 0.02'));
  it.each([
    ['all weights zero', '1', [0, 0], undefined],
    ['a negative weight', '1', [2, -1], undefined],
    ['no room', '1', [1, 1], ['0.40', '0.40']],
    ['a total finer than the coin', '1.005', [1, 1], undefined],
  ] as [string, string, number[], string[] | undefined][])('throws on %s', (_, total, weights, caps) => {
    expect(() => shares(total, weights, '0.01', caps)).toThrow();
  });
});

describe('beside dinero.js', () => {
  const weights = fc
    .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 })
    .filter((all) => all.some((weight) => weight > 0));
  const cents = fc.integer({ min: -1_000_000, max: 1_000_000 });
  const ours = (amount: number, ratios: readonly number[]) =>
    allocate(decimal(amount), ratios.map(decimal), decimal(1)).map((share) => share.toNumber());
  const dineros = (amount: number, ratios: number[]) =>
    theirs(dinero({ amount, currency: USD }), ratios).map((share) => toSnapshot(share).amount);

  it('agrees wherever the weights are alike', () => {
    fc.assert(
      fc.property(cents, fc.integer({ min: 1, max: 20 }), (amount, parts) => {
        expect(ours(amount, Array(parts).fill(1)).map((share) => share + 0)).toEqual(
          dineros(amount, Array(parts).fill(1)).map((share) => share + 0),
        );
      }),
    );
  });

  it('adds up, as theirs does, and is never farther from the exact shares (theirs gives the spare coins to the biggest weights)', () => {
    fc.assert(
      fc.property(cents, weights, (amount, ratios) => {
        const whole = ratios.reduce((a, b) => a + b, 0);
        const distance = (parts: readonly number[]) =>
          parts.reduce((all, part, index) => all + Math.abs(part * whole - amount * (ratios[index] ?? 0)), 0);
        const mine = ours(amount, ratios);
        const other = dineros(amount, ratios);
        expect(mine.reduce((a, b) => a + b, 0)).toBe(amount);
        expect(other.reduce((a, b) => a + b, 0)).toBe(amount);
        expect(distance(mine)).toBeLessThanOrEqual(distance(other));
        mine.forEach((part, index) => {
          expect(Math.abs(part - (other[index] ?? 0))).toBeLessThanOrEqual(1);
          if (ratios[index] === 0) expect(part + 0).toBe(0);
        });
      }),
    );
  });

  it('keeps decimals exact whatever the weights', () => {
    const fractions = fc.array(fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 999 })), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000_000 }), fractions, (amount, pairs) => {
        const parts = allocate(
          decimal(amount).dividedBy(100),
          pairs.map(([a, b]) => decimal(a).dividedBy(b)),
          decimal('0.01'),
        );
        expect(sum(parts).times(100).toNumber()).toBe(amount);
      }),
    );
  });
});
