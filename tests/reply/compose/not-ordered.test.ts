// A total says which pieces of the wearers' list are not in it.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const wedding = ['groom, best man, 3 groomsmen & 2 dads all bouts', '15 each inc, fresh'];
const mothers = 'mams get wrist corsages, 38 each';

it('names what was never ordered, with the price told for it', async () => {
  const reply = await replyTo([...wedding, mothers, 'how much all in?']);
  expect(reply).toMatch(/^£105\.00 in all/);
  expect(reply).toContain('Not in it: 2 wrist corsages of the wearers’ list (£38.00 each), not ordered yet. Say “add 2 wrist corsages”');
});

it('is silent once they are ordered', async () => {
  // 7 × 15 + 2 × 38 = 181
  const reply = await replyTo([...wedding, mothers, 'add 2 wrist corsages', 'how much all in?']);
  expect(reply).toMatch(/^£181\.00 in all/);
  expect(reply).not.toContain('Not in it');
});

it('has nothing to say of spares', async () => {
  expect(await replyTo(['10 bouts at 15 inc', 'groom, 5 groomsmen', 'total?'])).not.toContain('Not in it');
});
