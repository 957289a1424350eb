// A kind that is ordered and a number alone: asked where it could be several things, a price where it can only be one.

import { describe, expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';

const order = '12 bouts at 14, 2 corsages at 30, fresh, sat 13 march';
const talked = async (...said: readonly string[]) => (await talkJson(said.map((text) => ({ thread: 't1', text })))).at(-1);

describe('a kind and a number', () => {
  it('is asked about', async () => {
    expect((await talked(order, 'corsages 32'))?.reply?.text).toMatch(/^What does “corsages 32” set\?/);
    expect((await talked(order, 'corsages 32', 'each'))?.figures.price?.all['price']).toBe('232.00');
    expect((await talked(order, 'bouts 10', 'pieces'))?.figures.price?.all['price']).toBe('200.00');
    expect((await talked(order, 'bouts 10', 'made', 'total?'))?.reply?.text).toContain('£228.00');
  });
  it.each([
    ['bouts 13.50', '222.00'],
    ['bouts are 13.50', '222.00'],
    ['corsages 32 each', '232.00'],
  ])('“%s” is a price', async (said, total) => expect((await talked(order, said))?.figures.price?.all['price']).toBe(total));
  it('stays unread, and is named, where it could be neither', async () =>
    expect((await talked(order, 'bouts 8'))?.reply?.text).toBe('Not read: “bouts 8”. Nothing has changed.'));
});

describe('what is charged', () => {
  it('is of the only kind there is', async () =>
    expect((await talked('10 bouts at 15 fresh 6 march', 'ok charge 17'))?.figures.price?.all['price']).toBe('170.00'));
  it('is left open of two', async () => expect((await talked(order, 'ok charge 17'))?.reply?.text).toContain('Not read'));
});
