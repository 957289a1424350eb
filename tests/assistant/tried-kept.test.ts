// "What if 40?" and then "yes": what was only worked out becomes so, and the change is said back.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '20 bouts at 15 inc';

describe('a plain yes behind what was worked out', () => {
  it.each([
    [[order, 'what if 40?', 'yes'], /^Buttonholes: 20 → 40/],
    [[order, 'what about 18?', 'yes do that'], /^Buttonholes: 20 → 18/],
    [[order, 'can you do 150?', 'yes go with 150'], /^Buttonholes: 20 → 150/],
    [[order, 'what if 40?', 'she says yes, 40 bouts please'], /^Buttonholes: 20 → 40/],
    [[order, 'what if 16 each?', 'go with that'], /^Buttonholes: £15\.00 → £16\.00 each/],
    [[order, 'how much for 5 more?', 'yep add them'], /^Buttonholes: 20 → 25/],
    [[`${order}, 4 corsages at 35 inc`, 'what about 6 corsages?', 'yes please'], /^Corsages: 4 → 6/],
    [['what would 30 bouts at 15 inc be?', 'yes go with that'], /^30 buttonholes at £15\.00, VAT included/],
  ])('%j', async (said, reply) => {
    expect(await replyTo(said)).toMatch(reply);
  });
  it('is for what was worked out last', async () => {
    expect(await replyTo([order, 'what if 40?', 'what if 30?', 'yes'])).toMatch(/^Buttonholes: 20 → 30/);
  });
  it('takes a difference once', async () => {
    expect(await replyTo([order, 'how much for 5 more?', 'yes', 'yes'])).toContain('could not read');
  });
});

describe('no yes to it', () => {
  it.each([
    [[order, 'what if 40?', 'ok']],
    [[order, 'what if 40?', 'keep it']],
    [[order, 'what if 40?', 'yes?']],
    [[order, 'what if 40?', 'yes 30']],
    [[order, 'what if 40?', 'no thanks']],
    [[order, 'what if 40?', 'when do we start?', 'yes']],
    [[order, 'yes']],
  ])('%j', async (said) => {
    expect(await replyTo([...said, 'total?'])).toContain('£300.00 in all');
  });
  it('and what else is said with it is read as usual', async () => {
    expect(await replyTo([order, 'what if 40?', 'sat 6 march fresh', 'total?'])).toContain('£300.00');
  });
});

it('what was tried is kept beside the question that waits', async () => {
  expect(await replyTo(['20 bouts', 'what if 30 at 14?', '15', 'total?'])).toContain('£300.00 in all');
  expect(await replyTo(['20 bouts', 'what if 30 at 14?', 'yes', 'total?'])).toContain('£420.00 in all');
});
