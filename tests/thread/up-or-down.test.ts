// A new value with a word for which way it goes: the thread knows which of its numbers can go there.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '30 bouts 14 each and 6 corsages 30 each inc vat';

describe('one of the two alone can', () => {
  it.each([
    ['drop the corsages to 28', /^Corsages: £30\.00 → £28\.00 each/],
    ['put the corsages up to 35', /^What does/], // six or £30: both can
    ['put the corsages up to 12', /^Corsages: 6 → 12/],
    ['drop the corsages down to 25', /^Corsages: £30\.00 → £25\.00 each/],
    ['drop the bouts to 12', /^What does “drop the bouts to 12” set\?\nSay: 12 pieces \/ 12 each/],
    ['drop the bouts to 25', /^Buttonholes: 30 → 25/],
    ['bump the bouts up to 16', /^Buttonholes: £14\.00 → £16\.00 each/],
    ['make the bouts 25', /^Buttonholes: 30 → 25/],
  ])('%s', async (said, reply) => expect(await replyTo([order, said])).toMatch(reply));
});

it('takes the answer for what it says', async () => {
  expect(await replyTo([order, 'drop the bouts to 12', '12 each'])).toMatch(/^Buttonholes: £14\.00 → £12\.00 each/);
  expect(await replyTo([order, 'drop the bouts to 12', '12 pieces'])).toMatch(/^Buttonholes: 30 → 12/);
});

describe('a number behind its kind, like what one costs and unlike how many there are', () => {
  const order = '3 bouts 9 each, 2 corsages 20 each';
  it('is asked', async () => expect(await replyTo([order, 'make the corsages 22'])).toContain('Say: 22 pieces / 22 each'));
  it('is the price once that is said', async () =>
    expect(await replyTo([order, 'make the corsages 22', 'each'])).toMatch(/^Corsages: £20\.00 → £22\.00 each/));
  it.each([
    ['make the corsages 4', 'Corsages: 2 → 4'],
    ['make it 22 corsages', 'Corsages: 2 → 22'],
  ])('%s counts', async (line, first) => expect(await replyTo([order, line])).toContain(first));
});
