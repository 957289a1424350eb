// Two prices that hang on what the flowers are: both are worked out, and choosing the material chooses the price.

import { describe, expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

describe('two prices for two materials', () => {
  test('are two rows, and neither is kept', async () => {
    const reply = await talk(['25 lapels, 21 each dried or 14 each fresh']);
    expect(reply.match(/^£\d\d\.00 /gm)).toEqual(['£14.00 ', '£21.00 ']);
    expect(reply).toContain('Only worked out: no price is kept yet.');
    expect(reply).toContain('Say: dried / fresh');
  });

  test.each([
    ['dried', '25 buttonholes at £21.00'],
    ['fresh', '25 buttonholes at £14.00'],
  ])('%s chosen: %s', async (said, first) => {
    expect(await talk(['25 lapels, 21 each dried or 14 each fresh', said])).toContain(first);
  });

  test('a price tried in an order that has one changes nothing', async () => {
    expect(await talk(['25 lapels at 18', 'try 20 to 24'])).toContain('Only worked out: nothing in this thread has changed.');
  });
});

test('an order shared out between two materials is both of them', async () => {
  const reply = await talk(['30 lapels: 18 dried at 15, 12 fresh at 11', 'why?']);
  expect(reply).toContain('18 buttonholes, dried, £15.00 each');
  expect(reply).toContain('12 buttonholes, fresh, £11.00 each');
});
