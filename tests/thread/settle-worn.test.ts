// Pieces said with who wears them in an order that holds them already: the order's number is never taken for theirs.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '30 buttonholes at 12 and 6 wrist corsages at 30 inc vat';

describe('some of those ordered are named', () => {
  it.each([
    ['groom and best man in bouts', '2 wearers, 36 pieces: 28 buttonholes and 6 wrist corsages have no name yet.'],
    ['4 bridesmaids in wrist corsages', '4 wearers, 36 pieces: 30 buttonholes and 2 wrist corsages have no name yet.'],
    ['4 bridesmaids in corsages', '4 wearers, 36 pieces: 30 buttonholes and 2 wrist corsages have no name yet.'],
    ['6 bouts for the ushers', '6 wearers, 36 pieces: 24 buttonholes and 6 wrist corsages have no name yet.'],
    ['6 ushers bouts, 2 mums corsages', '8 wearers, 36 pieces: 24 buttonholes and 4 wrist corsages have no name yet.'],
  ])('%s', async (said, first) => {
    const reply = await replyTo([order, said]);
    expect(reply.split('\n')[0]).toBe(first);
    expect(reply).not.toContain('→');
  });

  it('of pieces whose kind nobody said', async () => {
    expect(await replyTo(['40 pieces', 'groom and best man in bouts'])).toMatch(/^2 wearers, 40 pieces: 38 pieces have no name yet\./);
  });

  it('and the price said beside them is their kind’s', async () => {
    expect(await replyTo(['30 buttonholes and 6 wrist corsages', '2 wrist corsages for the mums at 35 each inc'])).toContain(
      '6 wrist corsages at £35.00',
    );
  });
});

describe('more are worn than were ordered', () => {
  it('where all of the kind have names, the new ones are more', async () => {
    const list = ['4 bridesmaids in crowns', '2 flower girls in crowns'];
    expect(await replyTo(list)).toMatch(/^Flower crowns: 4 → 6\n6 wearers, 6 pieces: they agree\./);
    expect(await replyTo([...list, '5 bridesmaids in crowns'])).toMatch(/^Flower crowns: 6 → 7\n7 wearers, 7 pieces/);
  });
  it('one said by a line of the order keeps that line beside the new one', async () => {
    const reply = await replyTo(['6 bouts for the ushers at 12 and 2 corsages for the mums at 30 inc', '3 bouts for the page boys']);
    expect(reply).toMatch(/^Buttonholes: 6 → 9/);
  });
  it('a list longer than the order makes it as long', async () => {
    expect(await replyTo([order, '40 guests in bouts'])).toMatch(/^Buttonholes: 30 → 40/);
  });
});

describe('a price of their own', () => {
  const asked = [order, '1 buttonhole for the groom at 18'];
  it('asks whether they are some of those or more', async () => {
    const reply = await replyTo(asked);
    expect(reply).toContain('1 of the 30');
    expect(reply).toContain('1 more');
  });
  it('keeps the number where they are some of those', async () => {
    // 29 × 12 + 1 × 18 + 6 × 30 = 546
    expect(await replyTo([...asked, '1 of the 30'])).toContain('£546.00 in all');
  });
  it('raises it where they are more', async () => {
    // 30 × 12 + 1 × 18 + 6 × 30 = 558
    expect(await replyTo([...asked, '1 more'])).toContain('£558.00 in all');
  });
});

describe('one of them for somebody, at a price', () => {
  const order = '2 crowns at 60, 10 bouts at 14 inc';
  it.each(['one crown is for a baby so 40', 'one of the crowns is for a flower girl, 40', '1 crown is for the flower girl at 40'])(
    'is asked whether it is one of those: %s',
    async (said) => {
      expect(await replyTo([order, said])).toContain('Say: 1 of the 2 / 1 more');
      expect(await replyTo([order, said, '1 of the 2', 'total?'])).toMatch(/^£240\.00 in all/);
      expect(await replyTo([order, said, '1 more', 'total?'])).toMatch(/^£300\.00 in all/);
    },
  );
  it('is one of those nobody wears yet', async () =>
    expect(
      await replyTo([order, 'one crown is for a baby so 40', '1 of the 2', 'one crown is for a flower girl so 45', '1 of the 2', 'total?']),
    ).toMatch(/^£225\.00 in all/));
  it('is the only one there is', async () =>
    expect(await replyTo(['1 crown at 60, 10 bouts at 14 inc', 'one crown is for a baby so 40', 'total?'])).toMatch(/^£180\.00 in all/));
});
