// Names of plants as studios write them.

import { describe, expect, test } from 'vitest';
import { boughtReady, plantNamed } from '../../src/handbook/plants.ts';

describe('names', () => {
  test.each([
    ['statice', 'statice'],
    ['sea lavender', 'statice'],
    ['lavender', 'lavender'],
    ['German statice', 'german statice'],
    ['gyp', 'gypsophila'],
    ["baby's breath", 'gypsophila'],
    ['billy buttons', 'craspedia'],
    ['bunny tails', 'bunny tail'],
    ['hare’s tail', 'bunny tail'],
    ['poppies', 'poppy head'],
    ['gum leaves', 'eucalyptus'],
    ['wattle', 'acacia'],
    ['Geraldton wax', 'waxflower'],
    ['eucalyptus', 'eucalyptus'],
    ['white spray roses', 'rose'],
    ['satin ribbon', undefined],
    ['', undefined],
  ])('"%s" is %s', (words, plant) => {
    expect(plantNamed(words)).toBe(plant);
  });
});

test.each([
  ['dried statice', true],
  ['Preserved eucalyptus', true],
  ['silk rose', true],
  ['statice', false],
  ['silky oak', false],
])('"%s" is bought ready for the box: %s', (words, ready) => {
  expect(boughtReady(words)).toBe(ready);
});
