// The card on the wall: the order's count, the recipe as said, minutes and where they come from, cautions only where the hazard is.

import { describe, expect, test } from 'vitest';
import { type BenchCard, benchCards } from '../../src/handover/bench-card.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import { anEvent, line, wears, withSettings, yard } from './an-event.ts';

const cardOf = (event: ReturnType<typeof anEvent>, studio: StudioState = yard): BenchCard => {
  const [card] = benchCards(event, studio);
  if (card === undefined) throw new Error('no card');
  return card;
};
const cautions = (event: ReturnType<typeof anEvent>): readonly string[] => cardOf(event).cautions.map(({ id }) => id);
const recipe = (...ingredients: string[]) => ({ any: ingredients.map((ingredient) => ({ ingredient, stems: 1 })) });

describe('what is to be made', () => {
  test('one card a kind, lines of one kind together', () => {
    const cards = benchCards(anEvent({ lines: [line(8), line(2, 'wrist corsage'), line(1, 'buttonhole', { wearer: 'groom' })] }), yard);
    expect(cards.map(({ piece, count }) => [piece, count])).toEqual([
      ['buttonhole', 9],
      ['wrist corsage', 2],
    ]);
  });

  test('the groom’s own recipe is a batch of its own', () => {
    const lines = [
      { ingredient: 'statice', stems: 2 },
      { ingredient: 'rose', stems: 2, wearer: 'groom' },
    ];
    const card = cardOf(anEvent({ lines: [line(9)], wearers: [wears('groom')], recipes: { buttonhole: lines } }));
    expect(card.batches.map(({ wearer, pieces, lines: own }) => [wearer, pieces, own.length])).toEqual([
      ['groom', 1, 2],
      [undefined, 8, 1],
    ]);
  });
});

describe('minutes', () => {
  test('the event’s own rule first', () => {
    const rules = [{ fact: 'rule', what: 'minutes', to: '9', piece: 'buttonhole', words: '9 min each' }] as const;
    const card = cardOf(anEvent({ lines: [line(40)], rules }));
    expect(card.minutes.each).toEqual({ value: 9, origin: 'said' });
    expect(card.minutesAll).toBe(360);
  });

  test('then the studio’s', () => expect(cardOf(anEvent({ lines: [line(40)] })).minutes.each).toEqual({ value: 15, origin: 'studio' }));

  // Shop owner quoted on prom orders: corsage 45–60 minutes; shop worker: 45 far too slow. The handbook keeps the range and plans with 30.
  test('then the handbook’s, with its range', () => {
    const { each, range } = cardOf(anEvent({ lines: [line(1, 'wrist corsage')] }), withSettings({ minutes: {} })).minutes;
    expect(each.origin).toBe('assumed');
    expect(range?.least).toBeLessThanOrEqual(each.value);
    expect(range?.most).toBeGreaterThanOrEqual(each.value);
  });
});

describe('craft', () => {
  test('the steps of the kind, each with its source', () => {
    const { steps, sources, worn } = cardOf(anEvent({ lines: [line(1)] }));
    expect(steps.length).toBeGreaterThan(5);
    expect(steps[0]?.step).toMatch(/ribbon first/i);
    expect(steps.every(({ source }) => sources.includes(source))).toBe(true);
    expect(worn.side).toBe('left lapel');
  });
});

describe('cautions stand where the hazard is', () => {
  // Euphorbia sap: Eyewire and Reuters Health on a report in Eye, 2017. Magnets: FDA 2021 as reported, Sudden Cardiac Arrest UK.
  // Dried-flower dust: Occupational asthma agents, Phadia. Others: handbook/cautions-table.ts names its sources row by row.
  test.each([
    ['sap', anEvent({ lines: [line(1)], recipes: recipe('euphorbia') })],
    ['dried-dust', anEvent({ lines: [line(1)], material: 'dried' })],
    ['wire-ends', anEvent({ lines: [line(1)] })],
    ['magnet', anEvent({ lines: [line(1)], recipes: recipe('magnet') })],
    ['magnet', anEvent({ lines: [line(1)], wearers: [wears('dad', 1, { note: 'pacemaker' })] })],
    ['pin-child', anEvent({ lines: [line(1)], wearers: [wears('page boy')] })],
    ['magnet-child', anEvent({ lines: [line(1)], wearers: [wears('page boy')], recipes: recipe('magnet') })],
    ['hot-glue', anEvent({ lines: [line(1)], recipes: recipe('hot glue') })],
  ] as const)('%s', (id, event) => expect(cautions(event)).toContain(id));

  test('plain fresh roses on wire call for the wire ends alone', () => {
    const plain = anEvent({ lines: [line(1)], material: 'fresh', recipes: recipe('rose'), wearers: [wears('groom')] });
    expect(cautions(plain)).toEqual(['wire-ends']);
  });

  test('a magnet in place of the pin: no loose pin to warn of', () => {
    const event = anEvent({ lines: [line(1)], wearers: [wears('page boy')], recipes: recipe('magnet') });
    expect(cautions(event)).not.toContain('pin-child');
  });

  test('the page boy’s caution is on the buttonhole card, not on the corsage’s', () => {
    const event = anEvent({ lines: [line(1), line(1, 'wrist corsage')], wearers: [wears('page boy'), wears('mum')] });
    expect(benchCards(event, yard).map((card) => card.cautions.some(({ id }) => id === 'pin-child'))).toEqual([true, false]);
  });

  test('foraged by the note on the price list', () => {
    const studio = { ...yard, packs: [{ fact: 'pack', item: 'ivy', price: '0', note: 'foraged up the lane', words: 'ivy' }] as const };
    const event = anEvent({ lines: [line(1)], recipes: recipe('ivy') });
    expect(cardOf(event, studio).cautions.map(({ id }) => id)).toContain('foraging');
    expect(cautions(event)).not.toContain('foraging');
  });
});
