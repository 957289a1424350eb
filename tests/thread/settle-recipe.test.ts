// One line of a recipe said where more is held: never all of it gone in silence.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const held = ['24 buttonholes at 15 inc', '2 wheat, 1 statice, 1 ruscus each'];

it('a sundry joins the flowers', async () => {
  expect(await replyTo([...held, 'one magnet each'])).toContain('In each buttonhole now: 2 wheat, 1 statice, 1 ruscus, 1 magnet.');
});

describe('one flower', () => {
  it('is asked about', async () => {
    expect(await replyTo([...held, '1 rose each'])).toContain('Is “1 rose each” beside the rest of the recipe, or instead of all of it?');
  });
  it.each([
    ['1 rose each', 'beside', 'In each buttonhole now: 2 wheat, 1 statice, 1 ruscus, 1 rose.'],
    ['3 wheat each', 'beside the rest', 'In each buttonhole now: 3 wheat, 1 statice, 1 ruscus.'],
    ['3 wheat each', 'instead', 'Recipe: 3 wheat, without statice, without ruscus.'],
  ])('“%s”, “%s”', async (said, answer, line) => expect(await replyTo([...held, said, answer])).toContain(line));
});

describe('goes in as it is said', () => {
  it.each([
    [[...held, '3 wheat, 1 rose each'], 'Recipe for each buttonhole: 3 wheat, 1 rose.'],
    [[...held, 'corsages: 2 roses'], 'Recipe for each corsage: 2 roses.'],
    [[...held, 'add a rose'], 'In each buttonhole now: 2 wheat, 1 statice, 1 ruscus, 1 rose.'],
    [['24 buttonholes at 15 inc', '1 rose each', '2 wheat each'], 'Recipe for each buttonhole: 2 wheat.'],
  ])('%j', async (said, line) => expect(await replyTo(said)).toContain(line));
});

describe('what several pieces take', () => {
  const yields = [...held, '3 spray roses do 5 bouts'];
  it('is asked about too', async () => {
    expect(await replyTo(yields)).toContain('beside the rest of the recipe, or instead of all of it?');
  });
  it('joins the rest where that is the answer', async () => {
    expect(await replyTo([...yields, 'beside the rest'])).toContain(
      'In each buttonhole now: 2 wheat, 1 statice, 1 ruscus, 0.6 spray rose.',
    );
  });
});

it('what is told beside prices stays in', async () => {
  const priced = 'roses 28 a bunch of 20, 1 each; gyp 12 a bunch of 10, half a stem; ribbon 15cm each';
  const list = await replyTo(['30 buttonholes at 16 inc, fresh', priced, 'ribbon 5.50 for 25m', 'buying list']);
  expect(list).toContain('£85.50 for whole packs');
});
