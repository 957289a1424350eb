// "Price list": the table of what the studio pays, or that there is nothing on it yet.

import { expect, test } from 'vitest';
import { talk } from '../../support/converse.ts';
import { lastReply } from '../../support/thread-talk.ts';

test.each(['price list', 'price list:', 'show me the price list', 'what’s on the price list?'])('“%s” before any price', async (asked) => {
  const shown = await talk([asked]);
  expect(shown).toContain('The price list is empty.');
  expect(shown).toContain('Say a price, like “statice 7.50 wrap of 10”');
});

test('an item a row, by name: pack price, what it holds, what one costs', async () => {
  const shown = await talk(['statice 7.50 wrap of 10, bunny tails 4.80 bunch of 50', 'price list']);
  // 4.80 / 50 = 0.096, up to the penny.
  expect(shown).toMatch(/2 items on the price list\.[\s\S]*bunny tail +£4\.80 +50 stems +£0\.10\s+statice +£7\.50 +10 stems +£0\.75/i);
});

test('with its supplier where one is known', async () => {
  expect(await lastReply('price list')).toMatch(/Statice +£\d+\.\d\d +10 stems +£\d\.\d\d +Ferrygate Flowers/);
});

test('an item after the words is still a price', async () => {
  expect(await talk(['price list: ivy 4 bunch of 10'])).toContain('Ivy: £4.00 for 10 stems');
});
