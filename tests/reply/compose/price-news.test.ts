// A price that appears, moves or goes with a later message is said to, and a total that isn't the whole says so.

import { describe, expect, it } from 'vitest';
import { inOntario, plainStudio, replyTo } from '../../support/plain-studio.ts';

describe('a tax basis said with later pieces', () => {
  it('shows what it does to the pieces before', async () => {
    // Ontario, 13 % HST on top: Interpretation 125136, Canada Revenue Agency, 2011. 40 × 25 × 1.13 = 1130.
    const reply = await replyTo(['40 lapel pieces at 25', '33 pin corsages at 17.99 inc tax'], inOntario);
    expect(reply.split('\n')[0]).toBe('40 boutonnieres, for the client: $1,130.00 → $1,000.00');
  });

  it('says nothing where it changes nothing', async () => {
    expect(await replyTo(['40 lapel pieces at 25 inc', '33 pin corsages at 17.99 inc tax'])).not.toContain('for the client');
  });
});

describe('a tax nobody knows the rate of', () => {
  it.each(['JP', 'KW', 'US'] as const)('is the reason there is no price in %s', async (region) => {
    const reply = await replyTo(['40 buttonholes at 2500 inc tax'], plainStudio(region));
    expect(reply).toContain(`I don't know the tax rate to take out of that price (${region}).`);
  });

  it('does not take an order its price', async () => {
    const studio = plainStudio('US');
    const refused = await replyTo(['40 boutonnieres at 25', 'inc tax'], studio);
    expect(refused).toMatch(/I don't know the tax rate.*\nNothing of that message is kept/);
    expect(await replyTo(['40 boutonnieres at 25', 'inc tax', 'what is the total'], studio)).toMatch(/^\$1,000\.00 in all/);
  });
});

describe('the figures', () => {
  it('come as soon as the material decides the tax rate', async () => {
    const [first, second] = [['40 buttonholes at 25 inc'], ['40 buttonholes at 25 inc', 'dried']];
    expect(await replyTo(first, plainStudio('IE'))).toContain('40 buttonholes: noted. I can price it once the tax rate is known.');
    // Ireland, 23 % on dried flowers: 1000 / 1.23 = 813.01, over 1.3 and 4 for 40 pieces is 3.91 each.
    expect(await replyTo(second, plainStudio('IE'))).toContain(
      '40 buttonholes at €25.00, VAT included: €3.91 each for stems and sundries.',
    );
  });

  it('come again when a material moves the tax rate', async () => {
    const reply = await replyTo(['40 buttonholes at 25 inc, fresh', '10 crowns at 96', 'crowns are dried'], plainStudio('IE'));
    expect(reply).toContain('VAT 13.5 % on the fresh pieces, VAT 23 % on the dried pieces.');
  });

  it('never go without a sentence', async () => {
    const reply = await replyTo(['40 buttonholes at 25 inc, fresh', '4 pin corsages at 35 mixed'], plainStudio('IE'));
    expect(reply).toContain('40 buttonholes, 4 pin corsages: noted. I can price it once the tax rate is known.');
    expect(reply).toContain('Mixed pieces: which tax rate does your accountant use?');
  });
});

describe('a material said beside pieces', () => {
  const order = ['10 buttonholes at 20 dried event 13 feb', '10 flower crowns at 120 fresh'];
  it('belongs to those pieces', async () => {
    const reply = await replyTo(order);
    expect(reply).toContain('Material: buttonholes dried, flower crowns fresh');
    expect(reply).not.toContain('→');
  });
});

describe('pieces without a price', () => {
  const swapped = ['40 buttonholes at 25 inc, 2 wrist corsages at 42', 'swap the 2 wrist corsages for pin-ons'];

  it('are named when they come by a swap', async () => {
    expect(await replyTo(swapped)).toMatch(/^Wrist corsages: 2 → 0\nPin corsages: 0 → 2\n/);
  });

  it.each([
    ['what is the total', '£1,000.00 in all so far, of which £166.67 VAT; pin corsages not priced yet.'],
    ['summary', 'Price so far £1,000.00; to spend £160.26; pin corsages not priced yet.'],
    ['what can we spend', '£160.26 to spend for the order so far: £130.26 stems, £30.00 sundries; pin corsages not priced yet.'],
    ['how much is labour', '£192.31 labour in all so far, 23.1 % of the price before tax; pin corsages not priced yet.'],
  ])('are said to be missing from “%s”', async (question, line) => expect(await replyTo([...swapped, question])).toContain(line));
});
