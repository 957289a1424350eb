// Recipes as a thread tells them: said again, for one wearer, added to, dropped, swapped, scaled, and copied from another kind.
import { describe, expect, test } from 'vitest';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import type { FactOf, RecipeLineFact } from '../../src/reading/fact.ts';
import { applyFacts } from '../../src/thread/apply-facts.ts';
import { recipeOf } from '../../src/thread/apply-recipe.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import { pieces } from '../support/facts.ts';

const recipe = (lines: readonly RecipeLineFact[], rest: Partial<FactOf<'recipe'>> = {}): FactOf<'recipe'> => ({
  fact: 'recipe',
  lines: [...lines],
  words: 'as said',
  ...rest,
});
const dance: readonly RecipeLineFact[] = [
  { ingredient: 'bunny tails', stems: 3 },
  { ingredient: 'statice' },
  { ingredient: 'ribbon', length: 30, unit: 'cm' },
];
const said = (line: RecipeLineFact): string =>
  `${line.length ?? line.stems ?? 1}${line.makes === undefined ? '' : `/${line.makes}`}${line.unit ?? ''} ${line.ingredient}${line.wearer === undefined ? '' : ` (${line.wearer})`}`;
const told = (...facts: readonly FactOf<'recipe'>[]): EventState =>
  facts.reduce((state, fact) => applyFacts(state, [fact]), applyFacts(newEvent, [pieces(8, 'buttonhole')]));
const held = (event: EventState, kind: PieceKind | 'any' = 'buttonhole') => (event.recipes[kind] ?? []).map(said).join(', ');

describe('a recipe in a thread', () => {
  test('belongs to the only kind of the order, and is replaced when said again', () => {
    expect(held(told(recipe(dance)))).toBe('3 bunny tails, 1 statice, 30cm ribbon');
    expect(held(told(recipe(dance), recipe([{ ingredient: 'heather', stems: 2 }])))).toBe('2 heather');
  });

  test('said before the order stands for every kind, and gives way to the one said for a kind', () => {
    const early = applyFacts(newEvent, [recipe(dance)]);
    const ordered = applyFacts(early, [pieces(8, 'buttonhole'), pieces(2, 'corsage')]);
    const both = applyFacts(ordered, [recipe([{ ingredient: 'rose', stems: 3 }], { piece: 'corsage' })]);
    expect([held(both, 'any'), held(both, 'corsage')]).toEqual(['3 bunny tails, 1 statice, 30cm ribbon', '3 rose']);
  });

  test('for "a corsage" is for the sort of corsage ordered, whichever is said first', () => {
    const lines = [{ ingredient: 'spray rose', stems: 3 }];
    const later = applyFacts(applyFacts(newEvent, [pieces(6, 'wrist corsage'), pieces(8, 'buttonhole')]), [
      recipe(lines, { piece: 'corsage' }),
    ]);
    const early = applyFacts(applyFacts(newEvent, [recipe(lines, { piece: 'corsage' })]), [
      pieces(6, 'wrist corsage'),
      pieces(8, 'buttonhole'),
    ]);
    expect([held(later, 'wrist corsage'), recipeOf(early, 'wrist corsage'), recipeOf(early, 'buttonhole')]).toEqual([
      '3 spray rose',
      lines,
      [],
    ]);
  });

  test('keeps "3 stems makes 2" as it was said: a third or a half of a stem is never rounded', () => {
    expect(held(told(recipe([{ ingredient: 'rose', stems: 2 }], { pieces: 3 })))).toBe('2/3 rose');
  });

  test('of one wearer joins the others, and is replaced when that wearer is said again', () => {
    const groom = (stems: number) => recipe([{ ingredient: 'bunny tails', stems, wearer: 'groom' }]);
    expect(held(told(recipe(dance), groom(5), groom(4)))).toBe('3 bunny tails, 1 statice, 30cm ribbon, 4 bunny tails (groom)');
  });

  test.each<[string, Partial<FactOf<'recipe'>>, string]>([
    ['make the bunny tails 4', { adds: true, lines: [{ ingredient: 'bunny tail', stems: 4 }] }, '4 bunny tails, 1 statice, 30cm ribbon'],
    ['and a fern', { adds: true, lines: [{ ingredient: 'fern' }] }, '3 bunny tails, 1 statice, 30cm ribbon, 1 fern'],
    ['no statice', { drops: ['statice'] }, '3 bunny tails, 30cm ribbon'],
    ['0 statice', { adds: true, lines: [{ ingredient: 'statice', stems: 0 }] }, '3 bunny tails, 30cm ribbon'],
    ['limonium for the statice', { swaps: [{ ingredient: 'statice', with: 'limonium' }] }, '3 bunny tails, 1 limonium, 30cm ribbon'],
    ['times one and a half', { scale: '1.5' }, '4.5 bunny tails, 1.5 statice, 45cm ribbon'],
    ['a tenth of it, exactly', { scale: '0.1' }, '0.3 bunny tails, 0.1 statice, 3cm ribbon'],
  ])('changed: %s', (_words, change, expected) => {
    expect(held(told(recipe(dance), recipe([], change)))).toBe(expected);
  });

  test('said for all and changed without a kind is changed wherever it is held', () => {
    const two = applyFacts(newEvent, [pieces(8, 'buttonhole'), pieces(2, 'corsage')]);
    const both = [recipe(dance, { piece: 'buttonhole' }), recipe(dance, { piece: 'corsage' }), recipe([], { drops: ['statice'] })];
    const event = both.reduce((state, fact) => applyFacts(state, [fact]), two);
    expect([held(event), held(event, 'corsage')]).toEqual(['3 bunny tails, 30cm ribbon', '3 bunny tails, 30cm ribbon']);
  });

  test('copied: corsages like the buttonholes, twice the amounts', () => {
    const two = applyFacts(newEvent, [pieces(8, 'buttonhole'), pieces(2, 'corsage'), recipe(dance, { piece: 'buttonhole' })]);
    const copied = applyFacts(two, [recipe([], { piece: 'corsage', like: 'buttonhole', scale: '2' })]);
    expect(held(copied, 'corsage')).toBe('6 bunny tails, 2 statice, 60cm ribbon');
    expect(held(copied)).toBe(held(two));
  });
});
