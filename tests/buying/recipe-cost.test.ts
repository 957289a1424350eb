// Recipes costed against what the price leaves for them.
import { describe, expect, test } from 'vitest';
import { fiveAndSix } from '../../src/buying/recipe-cost.ts';
import { cut, stems } from '../../src/buying/recipe-lines.ts';
import { decimal } from '../../src/values/decimal.ts';
import { bunch, costOf, spool } from './price-rows.ts';

const budget = (stemsMoney: string, sundries = '0') => ({ stems: decimal(stemsMoney), sundries: decimal(sundries) });

describe('published arrangements', () => {
  // Floral pricing lesson, "Terms to know", Interstate Publishing, https://cdn.slideserve.com/odette/terms-to-know-powerpoint-ppt-presentation :
  // 10 carnations at .30, 10 leatherleaf at .10, vase .90, preservative .05; perishables 3 : 1, hard goods 2 : 1 make 13.90.
  test('ten carnations and ten leatherleaf in a vase', () => {
    const items = [
      bunch('carnation', '7.50', 25),
      bunch('leatherleaf', '2.50', 25),
      bunch('vase', '0.90', 1, { role: 'sundry' }),
      bunch('preservative', '0.05', 1, { role: 'sundry' }),
    ];
    const recipe = [stems('carnations', 10), stems('leatherleaf', 10), stems('vase', 1), stems('preservative', 1)];
    const cost = costOf(recipe, items, budget('4', '0.95'));
    expect(cost.rows.map((row) => row.cost.toFixed(2))).toEqual(['3.00', '1.00', '0.90', '0.05']);
    expect(cost.stems.times(3).plus(cost.sundries.times(2)).toFixed(2)).toBe('13.90');
    expect(cost.over.toFixed()).toBe('0');
  });

  // "What it costs", a studio's page, undated, http://www.zuzuspetalsaustin.com/what-it-costs.htm : a bridal bouquet of five kinds of flower,
  // 10 at 4.88, 5 at 10.56, 7 at 11.84, 9 at 4.00, 5 at 1.60 = 228.48; hard goods 6.65 and 6 pins at 0.03 = 6.83.
  test('a bouquet of five kinds of flower', () => {
    const items = [
      bunch('first flower', '4.88', 1),
      bunch('second flower', '10.56', 1),
      bunch('third flower', '11.84', 1),
      bunch('fourth flower', '4.00', 1),
      bunch('fifth flower', '1.60', 1),
      bunch('holder', '6.65', 1, { role: 'sundry' }),
      bunch('corsage pin', '0.03', 1),
    ];
    const counts = [10, 5, 7, 9, 5, 1, 6];
    const cost = costOf(
      items.map((item, at) => stems(item.name, counts[at] ?? 0)),
      items,
      budget('228.48', '6.83'),
    );
    expect(cost.stems.toFixed(2)).toBe('228.48');
    expect(cost.sundries.toFixed(2)).toBe('6.83');
    expect([cost.over.toFixed(), cost.sundriesOver.toFixed()]).toEqual(['0', '0']);
  });

  // Corsage Construction step by step (class handout, undated, https://studylib.net/doc/5573904/corsage-construction): one carnation, one leatherleaf, one sprig of gypsophila, 1 yd of no. 3 ribbon,
  // one wire, one pin. Amounts from the lesson; prices invented.
  test('a single-flower corsage, its ribbon cut whole from a spool', () => {
    const items = [
      bunch('carnation', '6.25', 25),
      bunch('leatherleaf', '5.00', 25),
      bunch('gypsophila', '9.00', 30),
      spool('no. 3 ribbon', '9.00', 25, 'm'),
      bunch('pin', '4.00', 100, { role: 'sundry' }),
    ];
    const recipe = [stems('carnation', 1), stems('leatherleaf', 1), stems('gypsophila', 1), cut('ribbon', 1, 'yd'), stems('pin', 1)];
    const cost = costOf(recipe, items, budget('0.70', '0.40'));
    expect(cost.rows.map((row) => [row.item.name, row.cost.toFixed(4), row.sundry])).toEqual([
      ['carnation', '0.2500', false],
      ['leatherleaf', '0.2000', false],
      ['gypsophila', '0.3000', false],
      ['no. 3 ribbon', '0.3333', true], // 27 whole yards in 25 m
      ['pin', '0.0400', true],
    ]);
    expect(cost.over.toFixed(2)).toBe('0.05');
    expect(cost.toChange?.item.name).toBe('gypsophila');
  });
});

const list = [bunch('bunny tails', '14.50', 50), bunch('statice', '6.00', 12), bunch('eucalyptus parvifolia', '6.50', 10)];
const recipe = [stems('bunny tails', 3), stems('statice', 1), stems('eucalyptus', 0.5)];

test('a row an ingredient: unit cost shown up to the coin, share of the budget, and what is under', () => {
  const cost = costOf(recipe, list, budget('2.00'));
  expect(cost.rows.map((row) => [row.unitCostShown.toFixed(2), row.cost.toFixed(3), row.share?.toFixed(2)])).toEqual([
    ['0.29', '0.870', '43.50'],
    ['0.50', '0.500', '25.00'],
    ['0.65', '0.325', '16.25'],
  ]);
  expect(cost.over.toFixed(3)).toBe('-0.305');
  expect(cost.toChange).toBeUndefined();
});

test('an item known by part of its name says so', () => {
  const cost = costOf(recipe, list, budget('2.00'));
  expect(cost.rows.map((row) => row.assumedItem)).toEqual([false, false, true]);
});

test.each([
  ['wax flower', 'waxflower'],
  ['waxflower', 'wax flower'],
  ['gumnuts', 'gum nut'],
])("a recipe's %s is the list's %s, in one word or two", (said, listed) => {
  const cost = costOf([stems(said, 2)], [bunch(listed, '12.00', 24), bunch('flannel flower', '9.00', 10)], budget('2.00'));
  expect(cost.rows.map((row) => [row.item.name, row.cost.toFixed(2), row.assumedItem])).toEqual([[listed, '1.00', false]]);
});

test('over budget names the dearest line', () => {
  const cost = costOf(recipe, list, budget('1.60'));
  expect(cost.over.toFixed(3)).toBe('0.095');
  expect(cost.toChange?.item.name).toBe('bunny tails');
});

test('spares are counted apart, for plants only unless a row says otherwise', () => {
  const items = [bunch('rose', '10.00', 10), bunch('pin', '5.00', 100, { role: 'sundry' })];
  const cost = costOf([stems('rose', 1), stems('pin', 2)], items, budget('1.00', '0.10'), 20);
  expect(cost.withSpares.toFixed(2)).toBe('1.30');
});

test('nothing left for stems: the rows stand and have no share', () => {
  const cost = costOf([stems('statice', 1)], list, budget('0'));
  expect(cost.rows[0]?.share).toBeUndefined();
  expect(cost.over.toFixed(2)).toBe('0.50');
});

describe('what cannot be costed is named and the rest is costed', () => {
  const items = [
    ...list,
    spool('velvet ribbon', 18, 10, 'm'),
    { ...bunch('moss', '4', 1), unit: { measure: 'weight', name: 'kg' } as const },
  ];
  test.each([
    [stems('bunny tials', 1), 'no price', ['bunny tails']],
    [stems('rajnigandha', 1), 'no price', []],
    [stems('velvet ribbon', 2), 'sold by length', []],
    [cut('statice', 30, 'cm'), 'sold by count', []],
    [stems('moss', 1), 'sold by weight', []],
    [cut('velvet ribbon', 11, 'm'), 'longer than a pack', []],
  ])('%j', (line, why, nearest) => {
    const cost = costOf([line, stems('statice', 1)], items, budget('2.00'));
    expect(cost.missing).toMatchObject([{ ingredient: line.ingredient, why, nearest }]);
    expect(cost.stems.toFixed(2)).toBe('0.50');
  });

  test('with no price list at all every ingredient is asked for', () => {
    expect(costOf(recipe, [], budget('2.00')).missing.map((lack) => lack.ingredient)).toEqual(['bunny tails', 'statice', 'eucalyptus']);
  });
});

test('no recipe: the stems money over five and over six', () => {
  const split = fiveAndSix(decimal('4.20'));
  expect([split.five.toFixed(2), split.six.toFixed(2)]).toEqual(['0.84', '0.70']);
});
