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
])('%s', (name, key) => {
  expect(ingredientKey(name)).toBe(key);
});

const listed = ['bunny tails', 'statice', 'eucalyptus parvifolia', 'velvet ribbon', 'linen ribbon', 'spray rose'];
describe('looked up', () => {
  test.each([
    ['Bunny tail', { match: 'same', name: 'bunny tails' }],
    ['eucalyptus', { match: 'only one', name: 'eucalyptus parvifolia' }],
    ['ribbon', { match: 'none', nearest: ['velvet ribbon', 'linen ribbon'] }],
    ['bunny tials', { match: 'none', nearest: ['bunny tails'] }],
    ['stattice', { match: 'none', nearest: ['statice'] }],
    ['eucaliptus', { match: 'none', nearest: ['eucalyptus parvifolia'] }],
    ['rajnigandha', { match: 'none', nearest: [] }],
    ['', { match: 'none', nearest: [] }],
  ])('%s', (said, match) => {
    expect(matchIngredient(said, listed)).toEqual(match);
  });
});
