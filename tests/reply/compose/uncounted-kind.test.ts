// A kind named beside the order without a number: how many is asked first, and a bare number answers for that kind alone.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const told = 'bride after lapels for the boys n a couple of corsages';

describe('how many', () => {
  it('is asked before any price', async () => expect(await replyTo([told])).toMatch(/How many buttonholes\?\s*$/));
  it('is answered by a number', async () => expect(await replyTo([told, '8'])).toMatch(/^about 2 corsages, 8 buttonholes: noted\./));
  it('or by those who wear them', async () =>
    expect(await replyTo([told, '8 boys'])).toMatch(/^about 2 corsages, 8 buttonholes \(boys\): noted\./));
  it.each([['bouts at 15, 2 corsages at 30'], ['2 corsages, no comb']])('is not asked of %s', async (line) =>
    expect(await replyTo([line])).not.toContain('How many'),
  );
});

describe('two bare prices', () => {
  const order = ['9 lapels', '2 corsages'];
  it('for two kinds: which is whose', async () =>
    expect(await replyTo([...order, '18 and 32, no vat on it'])).toContain('Say: buttonhole 18, corsage 32 / corsage 18, buttonhole 32'));
  it('before their kinds', async () =>
    expect(await replyTo([...order, '£15 bouts £26 corsages inc vat'])).toMatch(
      /^9 buttonholes at £15\.00, 2 corsages at £26\.00, £187\.00 in all/,
    ));
  it('without a mark of money may be counts: asked', async () => {
    expect(await replyTo([...order, '15 bouts 26 corsages'])).toContain('Say: the price of each / how many of each');
    expect(await replyTo([...order, '15 bouts 26 corsages', 'price'])).toContain('£187.00 in all');
  });
  it('too small for prices are counts', async () =>
    expect(await replyTo([...order, '10 bouts 3 corsages'])).toMatch(/^Buttonholes: 9 → 10/));
});
