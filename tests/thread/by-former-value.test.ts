// "The comb is 28 not 26": what the number was tells whether it is how many, how much or how many are made.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '12 bouts at 14 inc, 3 wrist corsages at 30';

describe('in an order of 12 at 14 and 3 at 30', () => {
  it.each([
    ['bouts are 15 not 14', /^Buttonholes: £14\.00 → £15\.00 each/],
    ['bouts 15 not 14', /^Buttonholes: £14\.00 → £15\.00 each/],
    ['the corsage is 33 not 30', /^Wrist corsages: £30\.00 → £33\.00 each/],
    ['corsages thirty three not thirty', /^Wrist corsages: £30\.00 → £33\.00 each/],
    ['corsages 33 instead of 30', /^Wrist corsages: £30\.00 → £33\.00 each/],
    ['change the corsages from 30 to 33', /^Wrist corsages: £30\.00 → £33\.00 each/],
    ['corsages from 30 to 33', /^Wrist corsages: £30\.00 → £33\.00 each/],
    ['bouts are 15 not 12', /^Buttonholes: 12 → 15/],
    ['corsages from 3 to 4', /^Wrist corsages: 3 → 4/],
    // It is neither, or is said as a count.
    ['bouts are 15 not 13', /^What does “bouts are 15 not 13” set\?\nSay: 15 pieces \/ 15 each/],
    ['16 bouts not 14', /^What does “16 bouts not 14” set\?\nSay: 16 pieces \/ 16 each/],
  ])('%s', async (said, reply) => expect(await replyTo([order, said])).toMatch(reply));
});

describe('where it is more than one number', () => {
  it('of the only kind, it is asked', async () => {
    expect(await replyTo(['14 bouts at 14 inc', 'bouts are 15 not 14'])).toContain('Say: 15 pieces / 15 each');
    expect(await replyTo(['14 bouts at 14 inc', 'bouts are 15 not 14', '15 each'])).toMatch(/^Buttonholes: £14\.00 → £15\.00 each/);
  });
  it('of those made alone, they are put right', async () =>
    expect(await replyTo(['20 bouts at 14 inc', 'made 8', 'bouts are 9 not 8'])).toMatch(/^9 of 20 buttonholes made/));
  it('of one line among two, that one alone costs something else', async () =>
    expect(await replyTo(['5 bouts at 14, 1 bout for the groom at 18', 'bouts are 15 not 14'])).toMatch(
      /^5 buttonholes at £15\.00, 1 buttonhole \(groom\) at £18\.00, £93\.00 in all/,
    ));
});

it('counts where nothing costs anything yet', async () =>
  expect(await replyTo(['20 bouts', 'bouts are 21 not 22'])).toMatch(/^Buttonholes: 20 → 21/));
