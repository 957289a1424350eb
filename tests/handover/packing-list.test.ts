// The van: boards, pins counted from the pieces, and the cold each material and plant can take.

import { describe, expect, test } from 'vitest';
import { packingList } from '../../src/handover/packing-list.ts';
import type { RecipeLineFact } from '../../src/reading/fact.ts';
import { anEvent, line, wears, yard } from './an-event.ts';

const of = (...ingredients: string[]): readonly RecipeLineFact[] => ingredients.map((ingredient) => ({ ingredient, stems: 1 }));
const takes = (event: ReturnType<typeof anEvent>, what: string) => packingList(event, yard).take.find((one) => one.what === what)?.count;

describe('things to take', () => {
  // Two pins crossed: Corsage and boutonniere etiquette, 2016 (https://www.thesnapdragonstudio.ca/single-post/2016/04/21/corsage-boutonniere-etiquette).
  // Spare pins (ten, or one in five) and boards of twelve: common practice, no source.
  test('forty buttonholes: four boards, eighty pins and sixteen spare', () => {
    const event = anEvent({ lines: [line(40)] });
    expect(takes(event, 'covered boards')).toBe(4);
    expect(takes(event, 'pins')).toBe(80);
    expect(takes(event, 'spare pins')).toBe(16);
    expect(takes(event, 'boxes')).toBeUndefined();
  });

  test('wrist corsages go in boxes and need no pins', () => {
    const event = anEvent({ lines: [line(7, 'wrist corsage')] });
    expect(takes(event, 'boxes')).toBe(2);
    expect(takes(event, 'pins')).toBeUndefined();
  });

  test('a child’s buttonhole gets a needle and thread in place of its pins', () => {
    const event = anEvent({ lines: [line(3)], wearers: [wears('groom'), wears('page boy')] });
    expect(takes(event, 'pins')).toBe(4);
    expect(packingList(event, yard).take.map(({ what }) => what)).toContain('needle and thread');
  });

  test('pieces on magnets have magnets to count back in, and no pins', () => {
    const event = anEvent({ lines: [line(6)], recipes: { buttonhole: of('rose', 'magnet') } });
    expect(takes(event, 'magnets')).toBe(6);
    expect(takes(event, 'pins')).toBeUndefined();
  });

  // Magnets 15 cm from an implant: Sudden Cardiac Arrest UK; FDA 2021, as reported.
  test('the wearer with an implant gets pins where the others have magnets, and the list says so', () => {
    const event = anEvent({
      lines: [line(6)],
      wearers: [wears('groom', 1, { note: 'pacemaker' }), wears('groomsmen', 5)],
      recipes: { buttonhole: of('rose', 'magnet') },
    });
    expect(takes(event, 'magnets')).toBe(5);
    expect(takes(event, 'pins')).toBe(2);
    expect(packingList(event, yard).keeping.rows.find(({ what }) => what === 'groom')?.how).toMatch(/no magnet/);
    expect(packingList(event, yard).cautions.map(({ id }) => id)).toContain('magnet');
  });

  test('a cool box for fresh work only', () => {
    const words = (material: 'fresh' | 'dried') => packingList(anEvent({ lines: [line(1)], material }), yard).take.map(({ what }) => what);
    expect(words('fresh')).toContain('cool box');
    expect(words('dried')).not.toContain('cool box');
  });
});

describe('keeping', () => {
  const least = (event: ReturnType<typeof anEvent>) =>
    packingList(event, yard).keeping.rows.map(({ what, least: degrees }) => [what, degrees]);

  // Orchids and cold (a flower food maker, December 2015, https://www.chrysalflowerfood.com/2015/12/): damage below 50 °F, which is 10 °C.
  test('fresh orchids: not below 10 °C, whatever the other flowers take', () => {
    expect(least(anEvent({ lines: [line(1)], material: 'fresh', recipes: { any: of('rose', 'orchid') } }))).toEqual([
      ['fresh pieces', 2],
      ['orchids', 10],
    ]);
  });

  test('the orchid in a fresh crown is no rule for dried buttonholes, and is named once', () => {
    const lines = [line(5, 'buttonhole', { material: 'dried' }), line(1, 'flower crown', { material: 'fresh' })];
    const both = anEvent({ lines, recipes: { buttonhole: of('orchid'), 'flower crown': of('rose') } });
    expect(least(both).map(([what]) => what)).toEqual(['dried pieces', 'fresh pieces']);
  });

  test('nobody said the material: no rule is guessed', () => {
    const { keeping } = packingList(anEvent({ lines: [line(5)] }), yard);
    expect(keeping).toEqual({ rows: [], materialUnknown: ['buttonhole'] });
  });

  test('every rule shown names its source', () => {
    const { keeping } = packingList(anEvent({ lines: [line(5)], material: 'dried' }), yard);
    expect(keeping.rows.every(({ sources }) => sources.length > 0)).toBe(true);
  });
});
