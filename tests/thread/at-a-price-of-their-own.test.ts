// Pieces that are added at a price of their own: beside those there are, and never at their price.

import { expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';

const totalOf = async (...said: readonly string[]): Promise<string | undefined> =>
  (await talkJson(said.map((text) => ({ thread: 't1', text })))).at(-1)?.figures.price?.all['price'];

it.each([
  [['15 bouts at 14 fresh 20 feb', '5 more but those at 12'], '270.00'],
  [['15 bouts at 14 fresh 20 feb', '5 more, these 12 each'], '270.00'],
  [['6 bouts at 14', 'and 2 corsages 30'], '144.00'],
  [['6 bouts at 14', 'also 2 hair combs 26', 'each'], '136.00'],
  [['6 bouts at 14', 'also 2 hair combs 26', 'for all'], '110.00'],
  [['12 bouts at 15, 4 corsages at 30 fresh sat 13 march', 'swap one corsage for a wrist one at 34'], '304.00'],
  [['9 bouts 15, 2 pin on corsages 28 sat 27th feb fresh', 'swap one corsage for a wrist one at 34'], '197.00'],
])('%j comes to %s', async (said, total) => expect(await totalOf(...said)).toBe(total));

it('names the price of a whole kind swapped as not used', async () => {
  const lines = await talkJson(
    ['12 bouts at 15, 4 corsages at 30', 'swap the corsages for crowns at 60'].map((text) => ({ thread: 't1', text })),
  );
  expect(lines.at(-1)?.reply?.text).toContain('Not used: “60”');
});
