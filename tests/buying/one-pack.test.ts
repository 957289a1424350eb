// A price said for several packs is no price of one: "3 bunches for £12" is £4 a bunch, "3 for £10" comes to none.
import { describe, expect, test } from 'vitest';
import { priceListOf } from '../../src/buying/price-list.ts';
import type { FactOf } from '../../src/reading/fact.ts';

const several = (price: string, quantity: number, rest: Partial<FactOf<'pack'>> = {}): FactOf<'pack'> => ({
  fact: 'pack',
  item: 'statice',
  price,
  per: 'bunch',
  size: 10,
  quantity,
  words: 'statice',
  ...rest,
});
const priceOfOne = (fact: FactOf<'pack'>, currency = 'GBP') => priceListOf([fact], { currency }).items[0]?.packPrice.toFixed();

describe('the price of one of several packs', () => {
  test.each([
    ['3 bunches for 12', several('12', 3, { forAll: true }), '4'],
    ['3 bunches for 9.99', several('9.99', 3, { forAll: true }), '3.33'],
    ['2 rolls for 7.50', several('7.50', 2, { forAll: true }), '3.75'],
    ['2 for 14 to 16: the dearer counts', several('14', 2, { forAll: true, priceMax: '16' }), '8'],
    ['3 bunches at 8 each', several('8', 3), '8'],
  ])('%s', (_said, fact, one) => {
    expect(priceOfOne(fact)).toBe(one);
  });

  test.each([
    ['3 for 10', several('10', 3, { forAll: true }), 'GBP'],
    ['4 for 2.50', several('2.50', 4, { forAll: true }), 'GBP'],
    ['2 for 15 yen', several('15', 2, { forAll: true }), 'JPY'],
    ['2 for 14 to 15', several('14.01', 2, { forAll: true, priceMax: '16' }), 'GBP'],
  ])('that does not come out in whole coins is a problem: %s', (_said, fact, currency) => {
    const list = priceListOf([fact], { currency });
    expect(list.problems.map(({ code }) => code)).toEqual(['pack-price-uneven']);
    expect(list.items).toEqual([]);
  });

  test('is of that price alone: a newer one without a number of packs stands as it is', () => {
    const { items } = priceListOf([several('12', 3, { forAll: true }), { fact: 'pack', item: 'statice', price: '5', words: '' }], {
      currency: 'GBP',
    });
    expect(items[0]?.packPrice.toFixed()).toBe('5');
  });
});
