// The price that would hold a recipe as it is.
import { describe, expect, test } from 'vitest';
import { priceToHold } from '../../src/buying/price-to-hold.ts';
import { stems } from '../../src/buying/recipe-lines.ts';
import { decimal, zero } from '../../src/values/decimal.ts';
import { type Case, terms } from '../pricing/terms-for-tests.ts';
import { bunch, costOf } from './price-rows.ts';

const nothing = { stems: zero, sundries: zero };
const flowers = bunch('flowers', '20', 20, { role: 'focal' });

describe('published', () => {
  // Realistic pricing, Florists' Review, January 2023, p 61, https://floristsreview.com/realistic-pricing/ : flowers 10 times 3.5, vase 2.50 times 2.5,
  // labour 20 % of both: 49.50.
  const given: Case = { basis: 'none', share: '20', stems: '3.5', sundriesMultiple: '2.5' };
  test('a recipe that names its own vase', () => {
    const items = [flowers, bunch('vase', '2.50', 1, { role: 'sundry' })];
    const cost = costOf([stems('flowers', 10), stems('vase', 1)], items, nothing);
    expect(priceToHold(cost, { piece: 'buttonhole' }, terms(given))).toMatchObject({ ok: true, value: { price: decimal('49.5') } });
  });

  test("stems alone, with the studio's own sundries", () => {
    const cost = costOf([stems('flowers', 10)], [flowers], nothing);
    expect(priceToHold(cost, { piece: 'buttonhole' }, terms({ ...given, sundries: '2.50' }))).toMatchObject({
      value: { price: decimal('49.5') },
    });
  });
});

test('at the price named, the recipe is no longer over', () => {
  const cost = costOf([stems('flowers', 4.5)], [flowers], nothing);
  const held = priceToHold(cost, { piece: 'buttonhole' }, terms({ rate: '20' }));
  // derived: 4.50 stems, times 4 is 18, and 30 % labour is 23.40, and 20 % tax is 28.08; up to the half pound
  expect(held).toMatchObject({ value: { price: decimal('28.5') } });
});
