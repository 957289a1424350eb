// What is not kept is refused in words, with what a discount would come to.

import { expect, it } from 'vitest';
import { talkJson } from '../../support/converse.ts';

const order = '18 bouts & 5 wrist corsages sat 27 march, dried, bouts 13 cors 30';
const lastOf = async (...said: readonly string[]): Promise<string | undefined> =>
  (await talkJson([order, ...said].map((text) => ({ thread: 't1', text })))).at(-1)?.reply?.text;

it.each(['client wants 10 percent off', '10% off', 'she wants 10% discount'])('“%s” is worked out and not taken off', async (said) => {
  const reply = await lastOf(said);
  expect(reply).toContain('10 % off £384.00 would be £345.60');
  expect(await lastOf(said, 'total?')).toContain('£384.00');
});
it('takes the price it comes to', async () => expect(await lastOf('10% off', '345.60 in all', 'total?')).toContain('£345.60'));
it.each(['delivery 25', 'add 15 delivery', 'plus £25 for delivery'])('“%s” is said not to be kept', async (said) =>
  expect(await lastOf(said)).toContain('I keep no charge for delivery'),
);
it('keeps no deposit either', async () => expect(await lastOf('£50 deposit paid')).toContain('I keep no deposits or payments'));
