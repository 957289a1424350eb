// Long price lists are cut before the search: short ones never, every role keeps its cheapest, and the answer stays quick and inside the budget.
import { describe, expect, test } from 'vitest';
import type { Item } from '../../src/buying/item.ts';
import { shortlist } from '../../src/buying/shortlist.ts';
import { whatFits } from '../../src/buying/what-fits.ts';
import { plantRoles } from '../../src/handbook/roles.ts';
import { decimal } from '../../src/values/decimal.ts';

const plant = (at: number): Item => ({
  name: `Plant ${at}`,
  packPrice: decimal(at * 37)
    .mod(900)
    .div(100)
    .plus(3),
  size: decimal(10 + (at % 5) * 10),
  unit: { measure: 'count', name: 'stem' },
  role: plantRoles[at % 5] ?? 'focal',
});
const plants = (count: number): readonly Item[] => Array.from({ length: count }, (_, at) => plant(at));
const wanted = { stemsBudget: decimal('3.25'), pieces: 40, usualSpare: decimal(10) };

describe('a shortlist', () => {
  test('of sixty or fewer is the list itself', () => {
    const sixty = plants(60);
    expect(shortlist(sixty, wanted)).toBe(sixty);
  });

  test('of more holds at most sixty, the cheapest of each role among them', () => {
    const many = plants(500);
    const kept = shortlist(many, wanted);
    expect(kept.length).toBeLessThanOrEqual(60);
    for (const role of plantRoles) {
      const packs = (item: Item) => item.packPrice.times(decimal(22).div(item.size).ceil()).toNumber(); // half a stem each, with spares
      const own = many.filter((item) => item.role === role);
      const one = (item: Item) =>
        role === 'foliage' || role === 'filler' ? packs(item) : item.packPrice.times(decimal(44).div(item.size).ceil()).toNumber();
      const least = Math.min(...own.map(one));
      expect(kept.some((item) => item.role === role && one(item) === least)).toBe(true);
    }
  });

  test('keeps what has no part in a recipe, so that it can be named', () => {
    const ribbon: Item = { name: 'Ribbon', packPrice: decimal(9), size: decimal(10), unit: { measure: 'length', name: 'm' } };
    expect(shortlist([...plants(80), ribbon], wanted)).toContain(ribbon);
  });

  test('of five hundred still gives recipes inside the budget', () => {
    const fits = whatFits(shortlist(plants(500), wanted), wanted);
    if (!fits.ok) throw new Error(fits.problem.code);
    expect(fits.value.recipes).toHaveLength(3);
    for (const { list } of fits.value.recipes) expect(list.spend.lte(decimal('130'))).toBe(true);
  });
});
