// Questions that compute and store nothing: how many for a budget, and a ladder of prices. Figures derived from the rules.

import { describe, expect, it } from 'vitest';
import { countFor } from '../../src/pricing/count-for.ts';
import type { Order } from '../../src/pricing/order.ts';
import { type LadderWanted, priceLadder } from '../../src/pricing/price-ladder.ts';
import { wageCost } from '../../src/pricing/wage-cost.ts';
import { decimal } from '../../src/values/decimal.ts';
import { at, type Case, terms } from './terms-for-tests.ts';

describe('how many at a price for a budget', () => {
  const many = (each: string, budget: string, given: Case = {}) => {
    const result = countFor(decimal(budget), decimal(each), { piece: 'buttonhole' }, terms(given));
    return result.ok
      ? `${result.value.count}, ${result.value.total.toFixed(2)}, ${result.value.left.toFixed(2)} left`
      : result.problem.code;
  };

  it.each([
    ['25', '600', {}, '24, 600.00, 0.00 left'],
    ['25', '624.99', {}, '24, 600.00, 24.99 left'],
    // tax comes on top of 25, and the client has 600 in all
    ['25', '600', { rate: '20', basis: 'on top' }, '20, 600.00, 0.00 left'],
    // 0.04 and 10 % of it is 0.044 each, printed 0.04; twenty-five are 1.10, twenty-six 1.14
    ['0.04', '1.11', { rate: '10', basis: 'on top' }, '25, 1.10, 0.01 left'],
    // three are 0.12 and 0.012, printed 0.13; the rounding of the tax may let one more in
    ['0.04', '0.13', { rate: '10', basis: 'on top' }, '3, 0.13, 0.00 left'],
    ['25', '20', {}, 'budget-below-one-piece'],
    ['25', '0', {}, 'price-not-positive'],
    ['0', '600', {}, 'price-not-positive'],
    ['0.01', '1000000', {}, 'count-too-large'],
  ] as [string, string, Case, string][])('%s for %s with %o: %s', (each, budget, given, expected) => {
    expect(many(each, budget, given)).toBe(expected);
  });
});

describe('a ladder of prices', () => {
  const wanted = (from: string, to: string, step?: string): LadderWanted => ({
    from: decimal(from),
    to: decimal(to),
    ...(step ? { step: decimal(step) } : {}),
  });
  const own = { ...terms({ rate: '20', currency: 'GBP', sundries: '0.75' }), wage: wageCost(decimal('12.71'), decimal('12.07')) };
  const rungs = (order: Order, range: LadderWanted) => {
    const ladder = priceLadder(order, own, range);
    return ladder.ok ? ladder.value.map((row) => row.price.toString()) : ladder.problem.code;
  };

  it('goes from 20 to 30 a pound at a time', () => {
    expect(rungs(at('25', 40), wanted('20', '30'))).toEqual(['20', '21', '22', '23', '24', '25', '26', '27', '28', '29', '30']);
  });

  it.each([
    ['24', '26', undefined, ['24', '24.5', '25', '25.5', '26']],
    ['20', '23', '2', ['20', '22', '23']],
    ['30', '20', '5', ['20', '25', '30']],
    ['100', '200', undefined, ['100', '110', '120', '130', '140', '150', '160', '170', '180', '190', '200']],
    ['18', '22', '4', ['18', '22']],
    ['20', '20', undefined, 'ladder-not-a-range'],
    ['20', '30', '0', 'ladder-not-a-range'],
    ['20', '30', '0.01', 'ladder-not-a-range'],
    ['0', '30', undefined, 'price-not-positive'],
  ] as [string, string, string | undefined, string[] | string][])('%s to %s by %s', (from, to, step, expected) => {
    expect(rungs(at('25', 40), wanted(from, to, step))).toEqual(expected);
  });

  it('says at each price what is left, what labour pays for and whether the recipe fits', () => {
    const ladder = priceLadder(at('25', 40), own, wanted('20', '30', '5'), () => decimal('3.20'));
    if (!ladder.ok) throw new Error(ladder.problem.code);
    const rows = ladder.value.map(({ priced, line, minutesPaid, recipeFits }) => [
      priced?.all.printed.price.toFixed(2),
      line?.each.printed.stems.toFixed(2),
      priced?.all.printed.wholesale.toFixed(2),
      minutesPaid,
      recipeFits,
    ]);
    // wholesale 40 × P / 1.2 / 1.3 / 4; minutes 40 × P / 1.2 × 30/130 / 14.244097 × 60
    expect(rows).toEqual([
      ['800.00', '2.46', '128.21', 648, false],
      ['1000.00', '3.26', '160.26', 810, true],
      ['1200.00', '4.06', '192.31', 972, true],
    ]);
  });

  it('shows which rungs the sundries use up, and fails when they use up all', () => {
    const dear = { ...own, sundriesEach: terms({ sundries: '3.30' }).sundriesEach };
    const ladder = priceLadder(at('25', 40), dear, wanted('20', '30', '5'));
    expect(ladder.ok && ladder.value.map((row) => row.problem?.code)).toEqual(['sundries-use-up-price', undefined, undefined]);
    const tooDear = { ...own, sundriesEach: terms({ sundries: '33' }).sundriesEach };
    expect(priceLadder(at('25', 40), tooDear, wanted('20', '30', '5'))).toMatchObject({
      ok: false,
      problem: { code: 'sundries-use-up-price' },
    });
  });

  it('tries one kind and leaves the others their price', () => {
    const order: Order = {
      lines: [
        { piece: 'buttonhole', count: 8 },
        { piece: 'flower crown', count: 1, price: { amount: decimal(140), per: 'each' } },
      ],
      price: { amount: decimal(18), per: 'each' },
    };
    const totals = (piece?: 'flower crown') => {
      const ladder = priceLadder(order, own, { ...wanted('20', '30', '10'), ...(piece ? { piece } : {}) });
      return ladder.ok && ladder.value.map((row) => row.priced?.all.printed.price.toString());
    };
    expect([totals(), totals('flower crown')]).toEqual([
      ['300', '380'],
      ['164', '174'],
    ]);
  });

  it('needs something to try', () => {
    expect(priceLadder({ lines: [] }, own, wanted('20', '30'))).toMatchObject({ ok: false, problem: { code: 'nothing-to-price' } });
  });
});
