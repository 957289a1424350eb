// The one change that is enough when a recipe costs too much.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cure, curesFor, stemsEach } from '../../src/buying/cures.ts';
import { stems } from '../../src/buying/recipe-lines.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch } from './price-rows.ts';

const items = [
  bunch('bunny tails', '14.50', 50, { role: 'focal' }), // 0.29
  bunch('strawflower', '5.00', 25, { role: 'focal' }), // 0.20
  bunch('statice', '5.00', 10, { role: 'texture' }), // 0.50
  bunch('nigella pods', '6.00', 30, { role: 'texture' }), // 0.20
  bunch('craspedia', '9.00', 10, { role: 'texture' }), // 0.90
  bunch('eucalyptus', '6.40', 10, { role: 'foliage' }), // 0.64
  bunch('gypsophila', '2.00', 20, { role: 'filler' }), // 0.10
  bunch('pin', '4.00', 100, { role: 'sundry' }),
];
const recipe = [stems('bunny tails', 3), stems('statice', 1), stems('eucalyptus', 0.5), stems('gypsophila', 1), stems('pin', 2)]; // 0.87 + 0.50 + 0.32 + 0.10
const say = (cure: Cure): string => {
  if (cure.cure === 'fewer') return `${cure.to.toFixed()} ${cure.item} instead of ${cure.from.toFixed()}: ${cure.each.toFixed(2)}`;
  if (cure.cure === 'swap') return `${cure.for} for ${cure.item}: ${cure.each.toFixed(2)}`;
  return `no ${cure.item}: ${cure.each.toFixed(2)}`;
};

describe('stems of 1.79 against', () => {
  test.each([
    ['1.75', ['2 bunny tails instead of 3: 1.50', 'strawflower for bunny tails: 1.52', 'no gypsophila: 1.69']],
    ['1.50', ['2 bunny tails instead of 3: 1.50', 'nigella pods for statice: 1.49', 'no eucalyptus: 1.47']],
    ['1.25', ['1 bunny tails instead of 3: 1.21', 'no bunny tails: 0.92']], // no other single ingredient is worth enough, so it falls to the focal
    ['0.90', []],
  ])('%s', (budget, cures) => {
    expect(curesFor(recipe, items, decimal(budget)).map(say)).toEqual(cures);
  });
});

test('half stems come down by halves', () => {
  const cures = curesFor([stems('eucalyptus', 1.5), stems('gypsophila', 1)], items, decimal('0.80'));
  expect(cures.map(say)[0]).toBe('1 eucalyptus instead of 1.5: 0.74');
});

test('a recipe of one ingredient is never cured by dropping it', () => {
  expect(curesFor([stems('craspedia', 1)], items, decimal('0.60')).map(say)).toEqual(['statice for craspedia: 0.50']);
});

test('every cure named is enough, by costing the changed recipe again', () => {
  const counts = fc.array(fc.constantFrom(0.5, 1, 1.5, 2, 3), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(counts, fc.integer({ min: 1, max: 300 }), (each, pence) => {
      const names = ['bunny tails', 'statice', 'eucalyptus', 'gypsophila'];
      const lines = names.map((name, at) => stems(name, each[at] ?? 1));
      const budget = decimal(pence).div(100);
      for (const cure of curesFor(lines, items, budget)) {
        const changed = lines.flatMap((line) => {
          if (line.ingredient !== cure.item) return [line];
          if (cure.cure === 'drop') return [];
          return cure.cure === 'fewer' ? [stems(cure.item, cure.to.toFixed())] : [{ ...line, ingredient: cure.for }];
        });
        expect(stemsEach(changed, items).lte(budget)).toBe(true);
      }
    }),
  );
});
