// A price told for one kind is for that kind alone: changed where it is ordered, kept waiting where it is not.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

it('changes its own kind and no other', async () => {
  const reply = await replyTo(['40 buttonholes at 25 inc, 6 crowns at 120', 'crowns are 140 each']);
  expect(reply).toMatch(/^Flower crowns: £120\.00 → £140\.00 each\n40 buttonholes at £25\.00, 6 flower crowns at £140\.00/);
});

it('waits for a kind that nobody has ordered yet', async () => {
  const order = ['40 buttonholes at 25 inc', 'wrist corsages are 42 each'];
  expect(await replyTo(order)).toMatch(/^Noted: £42\.00 for a wrist corsage, once any are ordered\.\n40 buttonholes at £25\.00/);
  expect(await replyTo([...order, '6 wrist corsages'])).toMatch(/40 buttonholes at £25\.00, 6 wrist corsages at £42\.00/);
});

it('gives its kind to a bare number that answers', async () => {
  expect(await replyTo(['buttonholes at 22 inc'])).toContain('How many buttonholes?');
  expect(await replyTo(['buttonholes at 22 inc', '45'])).toMatch(/^45 buttonholes at £22\.00/);
});

it('holds for several kinds at once', async () => {
  expect(await replyTo(['bouts £14, corsages £30 inc', '8 bouts and 4 corsages'])).toMatch(
    /^8 buttonholes at £14\.00, 4 corsages at £30\.00, £232\.00 in all/,
  );
});

it('is taken back with its message', async () => {
  expect(await replyTo(['40 buttonholes at 25 inc', 'wrist corsages are 42 each', 'undo', '6 wrist corsages'])).toContain(
    'No price yet for the wrist corsages',
  );
});

it('for corsages is for wrist corsages too', async () => {
  const order = ['12 bouts 18, corsages 45 inc', '4 wrist corsages'];
  expect(await replyTo(order)).toMatch(/^12 buttonholes at £18\.00, 4 wrist corsages at £45\.00, £396\.00 in all/);
});
