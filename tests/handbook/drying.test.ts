// Drying days against the bulletins they were read in. Each line names its source; a figure no source gives is not in the table.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dryingRows, dryingTime } from '../../src/handbook/drying.ts';

describe('by method, days', () => {
  test.each([
    // Drying Flowers, Iowa State University Extension, 10 July 1998: two to three weeks hanging
    ['hang', 'Drying Flowers', 'Iowa State University Extension', 14, 21],
    // Kentucky Hort News, 6 November 2017
    ['hang', 'Drying Flowers', 'Kentucky Hort News', 14, 21],
    // N. Clifton, Chicago Botanic Garden, Chicago Tribune, 26 September 1999
    ['hang', 'Drying Flowers (Chicago Botanic Garden)', 'Chicago Tribune', 5, 14],
    // Drying Flowers, Iowa State University Extension, 1998
    ['silica gel', 'Drying Flowers', 'Iowa State University Extension', 3, 7],
    // Preserving Fresh Flowers, Iowa State University Extension, 9 August 1996
    ['silica gel', 'Preserving Fresh Flowers', 'Iowa State University Extension', 3, 8],
    ['borax', 'Drying Flowers', 'Iowa State University Extension', 7, 14],
    ['borax', 'Preserving Fresh Flowers', 'Iowa State University Extension', 14, 21],
    // ICAR-IASRI course page 26721
    ['press', 'Course page on drying and pressing', 'ICAR-IASRI', 14, 28],
  ] as const)('%s, %s (%s): %i to %i', (method, title, publisher, least, most) => {
    const row = dryingRows.find(
      (one) => one.method === method && one.plant === undefined && one.source.title === title && one.source.publisher === publisher,
    );
    expect(row).toMatchObject({ least, most });
  });
});

describe('by plant, days hanging', () => {
  // Harvesting Everlasting Flowers for Drying, Iowa State University Extension, 26 July 1996: two to three weeks for each
  test.each(['yarrow', 'celosia', 'globe thistle', 'globe amaranth', 'German statice', 'gypsophila'])('%s: 14 to 21', (plant) => {
    expect(dryingTime(plant, 'hang')).toMatchObject({ least: 14, most: 21, by: 'this plant' });
  });

  test('sources that disagree are shown as their span, not as an average', () => {
    const strawflower = dryingTime('strawflower', 'hang'); // 14-21 Iowa 1996, 7-14 a flower farm
    expect(strawflower).toMatchObject({ least: 7, most: 21 });
    expect(strawflower.rows).toHaveLength(2);
    expect(dryingTime('roses', 'silica gel')).toMatchObject({ least: 2, most: 10 }); // 2-3, thick ones 10
  });

  test.each(['bunny tail', 'acacia', 'nigella', 'ammi', 'larkspur', 'pampas'])(
    '%s, for which no source gives days, takes the general range and says that it does',
    (plant) => {
      expect(dryingTime(plant, 'hang')).toMatchObject({ least: 5, most: 21, by: 'the method' });
    },
  );

  test('any name the studio uses finds the plant', () => {
    for (const words of ['paper daisies', 'Dried Strawflowers', 'helichrysum', 'a bunch of paper daisies']) {
      expect(dryingTime(words, 'hang').plant).toBe('strawflower');
    }
  });
});

describe('the studio’s own days', () => {
  test('win, under any name of the plant', () => {
    expect(dryingTime('billy buttons', 'hang', { Craspedia: { least: 9, most: 12 } })).toMatchObject({
      least: 9,
      most: 12,
      by: 'the studio',
    });
    expect(dryingTime('sea holly of ours', 'hang', { 'Sea holly of ours': { least: 2, most: 3 } })).toMatchObject({ least: 2, most: 3 });
  });

  test('a range written backwards never ends before it begins', () => {
    expect(dryingTime('statice', 'hang', { statice: { least: 10, most: 4 } })).toMatchObject({ least: 10, most: 10 });
  });
});

test('every row has a source with an address and a range in order', () => {
  for (const { least, most, source } of dryingRows) {
    expect(source.address).toMatch(/^https?:/);
    expect(least).toBeGreaterThan(0);
    expect(most).toBeGreaterThanOrEqual(least);
  }
});

test('any words at all give a range', () => {
  fc.assert(
    fc.property(fc.string(), (words) => {
      const { least, most } = dryingTime(words, 'hang');
      expect(least).toBeLessThanOrEqual(most);
    }),
  );
});
