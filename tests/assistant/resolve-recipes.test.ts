// Recipes that lean on the studio's book or on the price list, given as facts: saved, reused by kind, scaled in the copy, and ingredients named by their part.
import { describe, expect, it } from 'vitest';
import { type RecipeContext, resolveRecipes } from '../../src/assistant/resolve-recipes.ts';
import { priceListOf } from '../../src/buying/price-list.ts';
import type { Fact, FactOf, RecipeLineFact } from '../../src/reading/fact.ts';
import { applyFacts } from '../../src/thread/apply-facts.ts';
import { newEvent } from '../../src/thread/event.ts';
import { pieces } from '../support/facts.ts';

type Recipe = FactOf<'recipe'>;
const recipe = (lines: readonly RecipeLineFact[], rest: Partial<Recipe> = {}): Recipe => ({
  fact: 'recipe',
  lines: [...lines],
  words: 'as said',
  ...rest,
});
const dance = [{ ingredient: 'bunny tails', stems: 3 }, { ingredient: 'statice' }];
const { items } = priceListOf(
  [
    { fact: 'pack', item: 'Bunny tails', price: '14.50', size: 50, role: 'focal', words: '' },
    { fact: 'pack', item: 'Statice', price: '7.50', size: 10, role: 'texture', words: '' },
  ],
  { currency: 'GBP' },
);
const ordered = applyFacts(newEvent, [pieces(8, 'buttonhole')]);
const holding = applyFacts(ordered, [recipe(dance)]);
const context = (rest: Partial<RecipeContext> = {}): RecipeContext => ({ event: ordered, book: () => [], items: () => items, ...rest });
const book = () => [
  { name: 'autumn dance', piece: 'buttonhole' as const, lines: dance },
  { name: 'autumn dance', piece: 'corsage' as const, lines: [{ ingredient: 'statice', stems: 4 }] },
];
const told = (facts: readonly Fact[], given: RecipeContext) => {
  const resolved = resolveRecipes(facts, given);
  return resolved.ok ? resolved.value : resolved.problem;
};

describe('used again', () => {
  it('takes the kinds of this order', () => {
    expect(told([recipe([], { name: 'the autumn dance' })], context({ book }))).toEqual({
      event: [recipe(dance, { piece: 'buttonhole', from: 'autumn dance' })],
      saved: [],
    });
  });

  it('takes every kind where nothing is ordered yet, and a single one for whatever is ordered', () => {
    const all = told([recipe([], { name: 'autumn dance' })], context({ book, event: newEvent }));
    expect('event' in all && all.event.map((fact) => (fact as Recipe).piece)).toEqual(['buttonhole', 'corsage']);
    const crowns = applyFacts(newEvent, [pieces(4, 'flower crown')]);
    const only = told([recipe([], { name: 'autumn dance' })], context({ book: () => book().slice(0, 1), event: crowns }));
    expect('event' in only && applyFacts(crowns, only.event).recipes['flower crown']).toEqual(dance);
  });

  it('scales the copy', () => {
    const resolved = told([recipe([], { name: 'autumn dance', scale: '2' })], context({ book }));
    expect('event' in resolved && applyFacts(ordered, resolved.event).recipes.buttonhole?.map((line) => line.stems)).toEqual([6, 2]);
  });

  it('of an unknown name offers the nearest', () => {
    expect(told([recipe([], { name: 'autum dance' })], context({ book }))).toMatchObject({
      code: 'recipe-not-known',
      data: { nearest: ['autumn dance'] },
    });
  });
});

describe('saved', () => {
  it('with its lines: the event keeps the lines, the book the name', () => {
    expect(told([recipe(dance, { name: 'autumn dance' })], context())).toEqual({
      event: [recipe(dance)],
      saved: [recipe(dance, { name: 'autumn dance', piece: 'buttonhole' })],
    });
  });

  it('as the thread holds it', () => {
    expect(told([recipe([], { name: 'autumn dance', saves: true })], context({ event: holding }))).toEqual({
      event: [],
      saved: [recipe(dance, { name: 'autumn dance', piece: 'buttonhole' })],
    });
    expect(told([recipe([], { name: 'autumn dance', saves: true })], context())).toMatchObject({ code: 'no-recipe-yet' });
  });
});

describe('changed', () => {
  it('"groom gets a second focal" is a second of the recipe’s only focal flower', () => {
    const change = recipe([{ ingredient: 'focal', stems: 2, wearer: 'groom' }], { adds: true });
    expect(told([change], context({ event: holding }))).toMatchObject({
      event: [{ lines: [{ ingredient: 'bunny tails', stems: 2, wearer: 'groom' }] }],
    });
  });

  it.each<[string, Recipe, object]>([
    [
      'what is not in it',
      recipe([], { drops: ['fern'] }),
      { code: 'not-in-recipe', data: { ingredient: 'fern', known: ['bunny tails', 'statice'] } },
    ],
    ['a swap of what is not in it', recipe([], { swaps: [{ ingredient: 'fern', with: 'moss' }] }), { code: 'not-in-recipe' }],
    ['times nothing', recipe([], { scale: '0' }), { code: 'recipe-scale-not-positive' }],
    ['the corsages like crowns without a recipe', recipe([], { piece: 'corsage', like: 'flower crown' }), { code: 'no-recipe-yet' }],
  ])('refused: %s', (_name, change, expected) => {
    const event = _name.startsWith('the corsages') ? ordered : holding;
    expect(told([change], context({ event }))).toMatchObject(expected);
  });
});
