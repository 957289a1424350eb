// What one stem or one cut costs.
import { describe, expect, test } from 'vitest';
import { cut, stems } from '../../src/buying/recipe-lines.ts';
import { cutsInPack, lineCost, unitCost, unitCostShown } from '../../src/buying/unit-cost.ts';
import { inMetres } from '../../src/handbook/units.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, spool } from './price-rows.ts';

// Classroom decks on pricing floral designs, "always round up" the unit cost: http://slideplayer.com/slide/1559025/ (first three and the fourth row;
// half-up would print .31 as .30, .13 as .12); 18/36 and 7.50/10 from "Terms to know", Interstate Publishing,
// https://cdn.slideserve.com/odette/terms-to-know-powerpoint-ppt-presentation
describe('unit cost always rounds up', () => {
  test.each([
    ['4.95', 100, '0.05'],
    ['14.60', 48, '0.31'],
    ['2.49', 20, '0.13'],
    ['3.75', 2, '1.88'],
    ['18', 36, '0.50'],
    ['7.50', 10, '0.75'],
  ])('a pack of %s holding %i: %s', (price, size, shown) => {
    expect(unitCostShown(unitCost(decimal(price), decimal(size)), 2).toFixed(2)).toBe(shown);
  });

  test('up to the whole yen', () => {
    expect(unitCostShown(unitCost(decimal(1450), decimal(40)), 0).toFixed()).toBe('37');
  });

  test('a pack that divides evenly is not pushed up a coin', () => {
    expect(unitCostShown(unitCost(decimal('14.50'), decimal(50)), 2).toFixed(2)).toBe('0.29');
  });
});

// 1 yd = 0.9144 m exactly (NIST SP 811, 2008, appendix B.8): 8 yd is 7.3152 m, 24.38 times 30 cm.
test('a spool of 8 yd gives 24 pieces of 30 cm, not 24.4', () => {
  expect(cutsInPack(inMetres(decimal(8), 'yd'), decimal('0.3')).toFixed()).toBe('24');
});

test.each([
  ['10', 'm', '30', 'cm', 33],
  ['1', 'yd', '12', 'in', 3],
  ['25', 'm', '1', 'yd', 27],
  ['100', 'ft', '10', 'in', 120],
] as const)('a spool of %s %s cut at %s %s gives %i', (size, unit, length, cutUnit, cuts) => {
  const cost = lineCost(spool('velvet ribbon', 18, size, unit), cut('ribbon', length, cutUnit).amount);
  expect(cost.cutsInPack?.toNumber()).toBe(cuts);
  expect(cost.each.times(cuts).toDecimalPlaces(20).toFixed()).toBe('18');
});

test('half a stem costs half a stem', () => {
  expect(lineCost(bunch('eucalyptus', '6.50', 10), stems('eucalyptus', 0.5).amount).each.toFixed()).toBe('0.325');
});
