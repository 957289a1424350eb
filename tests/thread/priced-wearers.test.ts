// Wearers told with the prices of what they wear are on the list.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = 'groom £18, best man £15, 4 ushers £12 each, fresh inc vat';

it('are listed', async () => {
  expect(await replyTo([order, "who's got what?"])).toContain('6 wearers, 6 pieces: they agree.');
});

it('can drop out, and it is said that a piece is left', async () => {
  expect(await replyTo([order, 'one usher dropped out'])).toMatch(/^5 wearers, 6 pieces: 1 piece has no name yet\.[\s\S]*3 ushers/);
});
