// One price for all, and another number of pieces: what each comes to moves in no silence, and stays where that was said.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const order = '25 bouts, 400 total inc vat';

it('says what each comes to, old and new', async () => {
  expect(await replyTo([order, 'make it 30 bouts'])).toContain('Each: £16.00 → £13.33, as £400.00 for all stays.');
});

it.each([
  '30 at the same price each',
  'make it 30 at the same price each',
  'now 30, price each stays the same',
  '30 bouts, same price each',
  'make it 30 bouts at the same price each',
  '5 more bouts at the same price each',
])('%s', async (text) => {
  // 400 / 25 = 16, and 30 × 16 = 480
  expect(await replyTo([order, text])).toContain('£480.00');
  expect(await replyTo([order, text, 'total?'])).toMatch(/^£480\.00 in all/);
});

it('leaves a price for all that does not come out in coins', async () => {
  expect(await replyTo(['30 bouts, 400 total inc vat', '25 at the same price each'])).toContain(
    'Each: £13.33 → £16.00, as £400.00 for all stays.',
  );
});

it('says nothing of it where each has its price', async () => {
  expect(await replyTo(['25 bouts at 16 inc', '30 at the same price each'])).not.toContain('for all stays');
});
