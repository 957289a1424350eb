// What is added at a price of its own, and what that leaves as it was.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '16 bouts 14 each and 4 corsages 32 inc vat';

describe('a price beside what is added', () => {
  it.each([
    // 16 × 14 + 4 × 32 = 352
    [['also 2 crowns for the flower girls at 45 each'], '£442.00 in all', '2 flower crowns at £45.00'],
    [['and a crown for the bride at 75'], '£427.00 in all', '1 flower crown at £75.00'],
    [['another corsage at 30'], '£382.00 in all', '1 corsage at £30.00'],
    [['another corsage at 32'], '£384.00 in all', '5 corsages at £32.00'],
    [['also 2 crowns at 45 each', 'and a crown for the bride at 75'], '£517.00 in all', '1 flower crown at £75.00'],
  ])('%j', async (said, total, line) => {
    const reply = await replyTo([order, ...said]);
    expect(reply).toContain(total);
    expect(reply).toContain(line);
    expect(reply).not.toMatch(/£\d+\.\d\d → /); // no other kind costs anything else now
  });
});

it('is that of its kind where none of it has a price', async () => {
  expect(await replyTo(['4 corsages', 'another corsage at 30 inc'])).toContain('5 corsages at £30.00');
});

it('asks what more of them were where some are made, by their kind', async () => {
  expect(await replyTo([order, 'made 6 bouts', '6 more'])).toMatch(
    /^What does “6 more” set\?\nSay: 6 more buttonholes ordered \/ 6 more buttonholes made/,
  );
});
