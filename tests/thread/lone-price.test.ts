// One price said for several kinds that have none.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '16 buttonholes and 1 flower crown';

it('is asked of which it is', async () => {
  expect(await replyTo([order, '65'])).toContain('Say: buttonhole / flower crown / all of them');
});

describe('answered', () => {
  it('for one, the other is still asked for', async () => {
    const reply = await replyTo([order, '65', 'flower crown']);
    expect(reply).toMatch(/^1 flower crown at £65\.00/);
    expect(reply).toContain('No price yet for the buttonholes.');
  });
  it('for all', async () => {
    // 17 × 65 = 1,105
    expect(await replyTo([order, '65', 'all of them'])).toContain('£1,105.00 in all');
  });
});

describe('not asked', () => {
  it.each([
    [[order, '65 each'], '£1,105.00 in all'],
    [['16 buttonholes', '15'], '16 buttonholes at £15.00'],
    [[order, 'bouts 15', '65'], '1 flower crown at £65.00'],
    [[order, '15 for the bouts'], '16 buttonholes at £15.00'],
  ])('%j', async (said, line) => expect(await replyTo(said)).toContain(line));
});
