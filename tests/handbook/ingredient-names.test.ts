// When two names mean one ingredient. Plant names only; no trade list behind them.
import { describe, expect, test } from 'vitest';
import { ingredientKey, matchIngredient } from '../../src/handbook/ingredient-names.ts';

test.each([
  ['Bunny  Tails', 'bunny tail'],
  ['ROSES', 'rose'],
  ['ivy leaves', 'ivy leaf'],
  ['hypericum berries', 'hypericum berry'],
  ['Eucalyptus', 'eucalyptus'],
  ['clematis', 'clematis'],
  ['dried grass', 'dried grass'],
  ["baby's-breath", 'baby s breath'],
  ['thistles', 'thistle'],
  ['no. 3 ribbon', 'no. 3 ribbon'],
  ['édelweiss', 'edelweiss'],
  ['waxflower', 'wax flower'],
  ['Wax Flowers', 'wax flower'],
  ['strawflowers', 'straw flower'],
  ['riceflower', 'rice flower'],
  ['bunnytails', 'bunny tail'],
  ['rosehips', 'rose hip'],
  ['gumnuts', 'gum nut'],
  ['pepperberries', 'pepper berry'],
  ['dried snowberries', 'dried snow berry'],
])('%s', (name, key) => {
  expect(ingredientKey(name)).toBe(key);
});

const listed = [
  'bunny tails',
  'statice',
  'eucalyptus parvifolia',
  'velvet ribbon',
  'linen ribbon',
  'spray rose',
  'waxflower',
  'gum nut',
  'rosehip',
];
describe('looked up', () => {
  test.each([
    ['Bunny tail', { match: 'same', name: 'bunny tails' }],
    ['eucalyptus', { match: 'only one', name: 'eucalyptus parvifolia' }],
    ['ribbon', { match: 'none', nearest: ['velvet ribbon', 'linen ribbon'] }],
    ['bunny tials', { match: 'none', nearest: ['bunny tails'] }],
    ['stattice', { match: 'none', nearest: ['statice'] }],
    ['eucaliptus', { match: 'none', nearest: ['eucalyptus parvifolia'] }],
    ['rajnigandha', { match: 'none', nearest: [] }],
    ['wax flower', { match: 'same', name: 'waxflower' }],
    ['gumnuts', { match: 'same', name: 'gum nut' }],
    // a rose is no rosehip
    ['rose', { match: 'only one', name: 'spray rose' }],
    ['', { match: 'none', nearest: [] }],
  ])('%s', (said, match) => {
    expect(matchIngredient(said, listed)).toEqual(match);
  });
});
