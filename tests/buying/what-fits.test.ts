// Recipes proposed from the price list, their optimum checked against a general-purpose solver.

import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestMix, leastSpend } from '../../src/buying/best-mix.ts';
import { choicesOf, usualStems } from '../../src/buying/fit-choices.ts';
import type { Item } from '../../src/buying/item.ts';
import { readPriceList } from '../../src/buying/read-price-list.ts';
import { type FittingRecipe, whatFits } from '../../src/buying/what-fits.ts';
import { type PlantRole, plantRoles } from '../../src/handbook/roles.ts';
import { decimal } from '../../src/values/decimal.ts';
import { inGoodTime } from '../support/in-good-time.ts';
import { asLinearProgram, loadHighs } from './highs-mix.ts';
import { bunch } from './price-rows.ts';

const anItem = (roles: readonly PlantRole[]): fc.Arbitrary<Omit<Item, 'name'>> =>
  fc
    .record({
      pence: fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 12, arbitrary: fc.integer({ min: 100, max: 2500 }) }),
      size: fc.constantFrom(1, 5, 7, 10, 12, 20, 25, 48, 50, 100),
      role: fc.constantFrom(...roles),
      stock: fc.constantFrom(0, 0, 0, 6, 30),
      spare: fc.constantFrom(0, 10, 20, 100),
    })
    .map(({ pence, size, role, stock, spare }) =>
      bunch('', decimal(pence).div(100).toFixed(2), size, { role, stock: decimal(stock), spare: decimal(spare) }),
    );
const aList = (minLength: number, maxLength: number) =>
  fc
    .subarray([...plantRoles], { minLength: 1 })
    .chain((roles) => fc.array(anItem(roles), { minLength, maxLength }))
    .map((items) => items.map((item, at): Item => ({ ...item, name: `plant ${at}` })));
const choicesFor = (items: readonly Item[], pieces: number) => items.map((item) => choicesOf(item, pieces, decimal(0), usualStems));
const noGap = { mip_rel_gap: 0, mip_abs_gap: 0.5 } as const; // values are whole numbers: half of one is proof

test('200 random lists with a budget that is enough: the same optimum as HiGHS', async () => {
  const highs = await loadHighs();
  fc.assert(
    fc.property(aList(5, 13), fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 20_000 }), (items, pieces, pence) => {
      const choices = choicesFor(items, pieces);
      const budget = (leastSpend(choices) ?? Number.NaN) + pence * 100;
      const theirs = highs.solve(asLinearProgram(choices, budget), noGap);
      expect(theirs.Status).toBe('Optimal');
      expect(bestMix(choices, budget)?.value).toBe(Math.round(theirs.ObjectiveValue));
    }),
    { numRuns: 200 },
  );
}, 90_000);

test('40 random lists with a budget a hair too small: HiGHS finds nothing either', async () => {
  const highs = await loadHighs();
  fc.assert(
    fc.property(aList(5, 13), fc.integer({ min: 1, max: 120 }), (items, pieces) => {
      const choices = choicesFor(items, pieces);
      const budget = (leastSpend(choices) ?? Number.NaN) - 100; // a penny: whole-number spends, well beyond the solver's tolerance
      expect(highs.solve(asLinearProgram(choices, budget), noGap).Status).toBe('Infeasible');
      expect(bestMix(choices, budget)).toBeUndefined();
    }),
    { numRuns: 40 },
  );
});

test('a mix keeps to its own rules', () => {
  fc.assert(
    fc.property(aList(6, 30), fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 60_000 }), (items, pieces, pence) => {
      const choices = choicesFor(items, pieces);
      const mix = bestMix(choices, pence * 100);
      if (mix === undefined) return;
      expect([5, 6]).toContain(mix.choices.length);
      expect(new Set(mix.choices.map((choice) => choice.item)).size).toBe(mix.choices.length);
      expect(mix.choices.reduce((total, choice) => total + choice.spend, 0)).toBe(mix.spend);
      expect(mix.spend).toBeLessThanOrEqual(pence * 100);
      expect(new Set(mix.choices.map((choice) => choice.role))).toEqual(new Set(items.map((item) => item.role)));
    }),
  );
});

test('the least budget named is enough, and a hair less is not', () => {
  fc.assert(
    fc.property(aList(6, 12), fc.integer({ min: 1, max: 60 }), (items, pieces) => {
      const choices = choicesFor(items, pieces);
      const least = leastSpend(choices);
      if (least === undefined) throw new Error('six plants always make a recipe');
      expect(bestMix(choices, least)?.spend).toBe(least);
      expect(bestMix(choices, least - 1)).toBeUndefined();
    }),
  );
});

describe('sixty items in under 200 ms', () => {
  test.each([
    ['spread over the roles', plantRoles],
    ['all focal and filler', ['focal', 'filler'] as const],
    ['all of one role', ['focal'] as const],
  ])('%s', (_name, roles) => {
    const items = fc.sample(fc.array(anItem(roles), { minLength: 60, maxLength: 60 }), { numRuns: 5, seed: 7 });
    const timed = items.map((list) => {
      const named = list.map((item, at): Item => ({ ...item, name: `plant ${at}` }));
      const before = performance.now();
      const fit = whatFits(named, { stemsBudget: decimal('3.5'), pieces: 40, usualSpare: decimal(10) });
      expect(fit.ok && fit.value.recipes.length).toBe(3);
      return performance.now() - before;
    });
    inGoodTime(timed.sort((a, b) => a - b)[2] ?? 0, 200); // the middle one of five
  });
});

describe("from the demo studio's list", () => {
  const read = readPriceList(readFileSync(new URL('../../demo-data/prices.csv', import.meta.url), 'utf8'), { currency: 'GBP' });
  const items = read.ok ? read.value.items : [];
  const say = ({ recipe, list }: FittingRecipe) =>
    `${recipe.map((line) => `${line.amount.kind === 'stems' ? line.amount.stems.toFixed() : ''} ${line.ingredient}`).join(', ')}: ${list.spend.toFixed(2)}`;

  test('40 buttonholes with 3.60 for stems each', () => {
    const fit = whatFits(items, { stemsBudget: decimal('3.60'), pieces: 40, usualSpare: decimal(0) });
    if (!fit.ok) throw new Error(JSON.stringify(fit.problem));
    for (const { list } of fit.value.recipes) expect(list.spend.lte(144)).toBe(true);
    expect(fit.value.recipes.map(say)).toMatchInlineSnapshot(`
      [
        "1 Bunny tails, 1 Dried wheat, 2 Craspedia, 2 Nigella pods, 0.5 Larch twigs, 1 Gypsophila: 143.40",
        "3 Poppy heads, 1 Dried wheat, 1 Sea holly, 2 Nigella pods, 0.5 Larch twigs, 1 Dried ammi: 143.90",
        "1 Strawflower, 2 Ranunculus, 1 Dried wheat, 2 Nigella pods, 0.5 Larch twigs, 0.5 Limonium: 143.70",
      ]
    `);
    const worth = fit.value.recipes.map((one) => one.worth.toNumber());
    expect(worth).toEqual([...worth].sort((a, b) => b - a));
  });

  test('too little for any recipe names the least that would do', () => {
    const fit = whatFits(items, { stemsBudget: decimal('0.30'), pieces: 40, usualSpare: decimal(0) });
    expect(fit).toMatchObject({ ok: false, problem: { code: 'nothing-fits', data: { budget: '0.3000' } } });
    const least = fit.ok || fit.problem.code !== 'nothing-fits' ? '0' : (fit.problem.data.least ?? '0');
    expect(whatFits(items, { stemsBudget: decimal(least), pieces: 40, usualSpare: decimal(0) }).ok).toBe(true);
  });

  test('too few plants with a role', () => {
    const fit = whatFits(items.slice(0, 4), { stemsBudget: decimal(3), pieces: 40, usualSpare: decimal(0) });
    expect(fit).toMatchObject({ problem: { code: 'too-few-ingredients', data: { listed: 4, wanted: 5 } } });
  });

  test('a plant without a role is left out by name', () => {
    const fit = whatFits([...items, bunch('thistle', 5, 10)], { stemsBudget: decimal('3.60'), pieces: 40, usualSpare: decimal(0) });
    expect(fit.ok && fit.value.withoutRole).toEqual(['thistle']);
  });
});
