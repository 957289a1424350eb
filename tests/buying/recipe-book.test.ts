// Recipes per wearer, and used again by name.
import { describe, expect, test } from 'vitest';
import { batchesOf } from '../../src/buying/batches.ts';
import { recipeNamed, recipesNamed } from '../../src/buying/recipe-book.ts';
import type { RecipeLine } from '../../src/buying/recipe-lines.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';

const say = (lines: readonly RecipeLine[]) =>
  lines.map(({ ingredient, amount }) =>
    amount.kind === 'stems'
      ? `${amount.stems.toFixed()} ${ingredient}`
      : amount.kind === 'cut'
        ? `${amount.length.toFixed()} ${amount.unit} ${ingredient}`
        : amount.words,
  );
const batches = (event: Partial<EventState>) =>
  batchesOf({ ...newEvent, ...event }).map(
    (batch) => `${batch.pieces} ${batch.piece}${batch.wearer === undefined ? '' : ` (${batch.wearer})`}: ${say(batch.lines).join(', ')}`,
  );

describe('who gets what', () => {
  test('one recipe for everyone, cut lengths included', () => {
    expect(
      batches({
        lines: [{ piece: 'buttonhole', count: 8 }],
        recipes: { any: [{ ingredient: 'rose' }, { ingredient: 'ribbon', length: 30, unit: 'cm' }] },
      }),
    ).toEqual(['8 buttonhole: 1 rose, 30 cm ribbon']);
  });

  test('groom: 2 roses. rest: 1 rose', () => {
    const any = [
      { ingredient: 'rose', stems: 2, wearer: 'groom' },
      { ingredient: 'rose', stems: 1, wearer: 'rest' },
    ];
    expect(batches({ lines: [{ piece: 'buttonhole', count: 8 }], recipes: { any } })).toEqual([
      '1 buttonhole (groom): 2 rose',
      '7 buttonhole: 1 rose',
    ]);
  });

  test("a wearer's line takes the place of the shared one and the rest stays", () => {
    const buttonhole = [
      { ingredient: 'roses', stems: 1 },
      { ingredient: 'fern', stems: 0.5 },
      { ingredient: 'rose', stems: 2, wearer: 'dads' },
    ];
    const event = { lines: [{ piece: 'buttonhole', count: 8 }], recipes: { buttonhole }, wearers: [{ wearer: 'dads', count: 2 }] } as const;
    expect(batches(event)).toEqual(['2 buttonhole (dads): 0.5 fern, 2 rose', '6 buttonhole: 1 roses, 0.5 fern']);
  });

  test('a line of the order with its own wearer is that wearer and no one else', () => {
    const any = [{ ingredient: 'rose' }, { ingredient: 'thistle', wearer: 'groom' }];
    const lines = [
      { piece: 'buttonhole', count: 1, wearer: 'Groom' },
      { piece: 'buttonhole', count: 7 },
    ] as const;
    expect(batches({ lines, recipes: { any } })).toEqual(['1 buttonhole (Groom): 1 rose, 1 thistle', '7 buttonhole: 1 rose']);
  });

  test('a kind with its own recipe does not take the shared one', () => {
    const recipes = { any: [{ ingredient: 'rose' }], corsage: [{ ingredient: 'rose', stems: 3 }] };
    expect(
      batches({
        lines: [
          { piece: 'buttonhole', count: 4 },
          { piece: 'corsage', count: 2 },
        ],
        recipes,
      }),
    ).toEqual(['4 buttonhole: 1 rose', '2 corsage: 3 rose']);
  });

  test('a kind without a recipe is still counted', () => {
    expect(batches({ lines: [{ piece: 'flower crown', count: 2 }] })).toEqual(['2 flower crown: ']);
  });
});

const dance = [{ ingredient: 'bunny tails', stems: 3 }, { ingredient: 'statice' }, { ingredient: 'ribbon', length: 30, unit: 'cm' }];
const book = [
  { name: 'Autumn dance', lines: [{ ingredient: 'heather' }] },
  { name: 'Harbour wedding', lines: [] },
  { name: 'autumn dance', lines: dance },
];

describe('used again', () => {
  test.each(['autumn dance', 'the Autumn Dance', 'same recipe as the autumn dance'])('"%s" is the newest of that name', (name) => {
    expect(recipeNamed(book, name)).toMatchObject({ ok: true, value: { lines: dance } });
  });

  test('a slip in the name is offered, not taken', () => {
    expect(recipeNamed(book, 'autum dance')).toMatchObject({
      ok: false,
      problem: { code: 'recipe-not-known', data: { nearest: ['Autumn dance', 'autumn dance'] } },
    });
  });

  test('an event with a recipe for each kind gives them all, the newest of each', () => {
    const kinds = [
      { name: 'harbour dance', piece: 'corsage' as const, lines: [{ ingredient: 'rose' }] },
      { name: 'harbour dance', piece: 'buttonhole' as const, lines: [{ ingredient: 'heather' }] },
      { name: 'Harbour dance', piece: 'buttonhole' as const, lines: dance },
    ];
    const found = recipesNamed([...book, ...kinds], 'the harbour dance');
    expect(found.ok && found.value.map((recipe) => [recipe.piece, recipe.lines.length])).toEqual([
      ['corsage', 1],
      ['buttonhole', 3],
    ]);
  });
});
