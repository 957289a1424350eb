// What is left over teaches how much to buy beyond the recipe; what broke teaches how many pieces to make.

import { describe, expect, test } from 'vitest';
import type { FactOf } from '../../src/reading/fact.ts';
import { breakages, learnedSpares } from '../../src/review/learned-spares.ts';
import { decimal } from '../../src/values/decimal.ts';
import { anEvent, line, yard } from '../handover/an-event.ts';
import { unused } from './past-event.ts';

const pack = (item: string, size: number, more: Partial<FactOf<'pack'>> = {}): FactOf<'pack'> => ({
  fact: 'pack',
  item,
  price: '14.50',
  size,
  unit: 'stem',
  per: 'bunch',
  words: item,
  ...more,
});
const studio = { ...yard, packs: [pack('statice', 25), pack('ribbon', 8, { unit: 'yd', per: 'spool' })] };
const event = (left: number, item = 'statice') =>
  anEvent({ lines: [line(40)], recipes: { buttonhole: [{ ingredient: 'statice', stems: 2 }] }, actuals: [unused(left, item)] });

// Spares of 20 %: How many stems (a flower farm, 2014, http://fernwoodfarmllc.com/howmany.htm). 40 pieces at 2 stems are 80, with spares 96: four bunches
// of 25 are 100.
const twenty = decimal(20);

describe('spare stems', () => {
  test.each([
    [4, '20'], // 96 used
    [20, '0'], // 80 used
    [12, '10'], // 88 used
    [30, '0'], // fewer used than the recipe says: still nothing below nothing
    [11, '12'], // 89 used: 11.25 %, up
  ])('%i left of 100: %s %% were really needed', (left, percent) => {
    const [learned] = learnedSpares(event(left), studio, twenty);
    expect(learned?.percent.toString()).toBe(percent);
    expect(learned?.recipe.toString()).toBe('80');
    expect(learned?.now.toString()).toBe('20');
  });

  test('offered as the whole price-list row with the new spare, unless nothing changes', () => {
    expect(learnedSpares(event(12), studio, twenty)[0]?.offer).toMatchObject({
      fact: 'pack',
      item: 'statice',
      price: '14.50',
      spare: '10',
    });
    expect(learnedSpares(event(4), studio, twenty)[0]?.offer).toBeUndefined();
  });

  test('found under its plural', () => expect(learnedSpares(event(12, 'Statices'), studio, twenty)).toHaveLength(1));
  test('more left than was on the list teaches nothing', () => expect(learnedSpares(event(150), studio, twenty)).toEqual([]));
  test('nor does a number nobody could read', () => expect(learnedSpares(event(Number.NaN), studio, twenty)).toEqual([]));
  test('nor does a length, or an item nobody has a price for', () => {
    expect(learnedSpares(event(3, 'ribbon'), studio, twenty)).toEqual([]);
    expect(learnedSpares(event(3, 'moss'), studio, twenty)).toEqual([]);
  });
});

test('broken pieces as the spares that would have covered them', () => {
  const broken = anEvent({ lines: [line(40), line(2, 'wrist corsage')], progress: { buttonhole: { made: 40, broke: 3 } } });
  expect(breakages(broken).map(({ piece, broke, percent }) => [piece, broke, percent.toString()])).toEqual([['buttonhole', 3, '8']]); // 7.5 %, up
});
