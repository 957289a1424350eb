// A kind that is wanted, with no number and no price: what is lacking is asked, and a bare answer is of that kind.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

describe('a kind named and nothing else', () => {
  it.each([
    ['quote for some buttonholes pls', 'How many buttonholes, and at what price each?'],
    ['need flower crowns', 'How many flower crowns, and at what price each?'],
    ['dried buttonholes', 'How many buttonholes, and at what price each?'],
    ['need some bouts for saturday week', 'How many buttonholes, and at what price each?'],
    ['dried bouts, event 14 march', 'How many buttonholes, and at what price each?'],
  ])('“%s” is asked how many', async (said, asked) => {
    const reply = await replyTo([said]);
    expect(reply.trimEnd().split('\n').at(-1)).toBe(asked);
    expect(reply).not.toContain('Not used');
  });

  it.each([
    ['quote for some buttonholes pls', '30', /^30 buttonholes/],
    ['need some bouts for saturday week', '30 at 12 inc', /^30 buttonholes at £12\.00/],
    ['need flower crowns', '4 at 60 plus vat', /^4 flower crowns at £60\.00/],
  ])('“%s” and then “%s” is of that kind', async (said, answer, reply) => {
    expect(await replyTo([said, answer])).toMatch(reply);
  });

  it.each([
    ['need buttonholes and corsages for 14 march', 'How many pieces, and at what price each?'],
    ['i love buttonholes with roses', 'I could not read that'],
  ])('“%s” leaves it open which kind, or how many', async (said, reply) => {
    expect(await replyTo([said])).toContain(reply);
  });

  it('keeps the price of a kind nobody has counted, and counts none of it', async () => {
    const reply = await replyTo(['10 bouts and a few corsages at 30 inc']);
    expect(reply).toMatch(/^Noted: £30\.00 for a corsage, once any are ordered\.\n10 buttonholes: noted\./);
  });

  it('asks nothing of the kind in a thread with an order', async () => {
    expect(await replyTo(['40 buttonholes at 25 inc', 'they love the corsages'])).not.toContain('How many corsages');
  });
});
