// Corrections of several things, of one kind that was never meant, and of an hour that is not the event's own.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '20 bouts at 14, 6 corsages at 28';

it('puts the price up by so much, with courtesy before the reason', async () =>
  expect(await replyTo([order, 'put £5 on every bout please, wire went up'])).toContain('Buttonholes: £14.00 → £19.00 each'));

it('puts both prices right', async () => {
  const reply = await replyTo([order, 'bouts 12.50 rather than 12, corsages 30 rather than 26']);
  expect(reply).toContain('£14.00 → £12.50 each');
  expect(reply).toContain('£28.00 → £30.00 each');
});

it('puts both counts right', async () => {
  const reply = await replyTo([order, 'final numbers 22 bouts 7 corsages, down from 24 and 8']);
  expect(reply).toContain('20 → 22');
  expect(reply).toContain('6 → 7');
});

it('adds a kind never meant to those that are there', async () => {
  const reply = await replyTo([order, 'all 6 corsages on that order should have said bouts']);
  expect(reply).toContain('Buttonholes: 20 → 26');
  expect(reply).toContain('Corsages: 6 → 0');
});

it("keeps the event's hour apart from the one it is collected at", async () =>
  expect(await replyTo(['prom 28 may, collect at 3'])).toMatch(/event Fri 28 May 2027 \(year assumed\), hand over Fri 28 May 2027 15:00/));

it("changes nobody else's material", async () =>
  expect(await replyTo(['20 bouts at 14, fresh', "nan's is silk now, everyone else fresh"])).toContain('nothing has changed'));

it('takes the tax said last for the new price', async () =>
  expect(await replyTo(['20 bouts at 14 plus vat', 'its 15 each not 14 inc vat'])).toContain('Tax: on top → included'));
