// Spare pins, and how cold each piece may be kept.

import { describe, expect, test } from 'vitest';
import { keepingDegrees, keepingFor, sparePins } from '../../src/handbook/packing.ts';

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
const leastFor = (plant: string): number | undefined => keepingFor(['fresh'], [plant])[1]?.least;

// Common practice, no source.
test('spare pins: ten, or one in five', () => {
  expect([0, 2, 50, 80, 81].map(sparePins)).toEqual([0, 10, 10, 16, 17]);
});

describe('keeping', () => {
  // Orchids and cold (a flower food maker, December 2015): below 50 °F orchids are damaged in 4 to 6 hours.
  test.each(['orchids', 'white cymbidium', 'Cattleya'])('%s: not below 10 °C', (plant) => {
    expect(leastFor(plant)).toBe(celsius(50));
  });

  // Moth orchid, Chain of Life Network text: above 55 °F. Dendrobium, Floral Design Institute: 55 to 60 °F. Stephanotis, the same: 42 °F.
  test.each([
    ['phalaenopsis', 55],
    ['dendrobium orchid', 55],
    ['stephanotis', 42],
  ])('%s: no colder than its source says', (plant, fahrenheit) => {
    expect(leastFor(plant)).toBeGreaterThanOrEqual(celsius(fahrenheit));
    expect(leastFor(plant)).toBeLessThan(celsius(fahrenheit) + 1);
  });

  test('fresh work is chilled, dried work is kept dark, cool and dry', () => {
    expect(keepingFor(['fresh'], []).map(keepingDegrees)).toEqual(['2 to 3 °C']);
    expect(keepingFor(['dried'], [])[0]?.how).toMatch(/^dark, cool and dry/);
  });

  test('a dried orchid takes no cold limit, and an orchid is named once', () => {
    expect(keepingFor(['dried'], ['orchid'])).toHaveLength(1);
    expect(keepingFor(['fresh'], ['orchid', 'white orchid'])).toHaveLength(2);
    expect(keepingFor(['fresh', 'fresh'], ['rose'])).toHaveLength(1);
  });
});
