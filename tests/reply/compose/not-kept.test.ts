// Deposits, payments and discounts are kept nowhere, and it is said so.

import { describe, expect, it } from 'vitest';
import { plainStudio, replyTo } from '../../support/plain-studio.ts';

const order = '20 bouts at 15 inc';

describe('a deposit or a payment', () => {
  it.each(['£50 deposit paid', 'took a £50 deposit', 'they paid 100 upfront', '25% deposit to hold the date'])('%s', async (line) =>
    expect(await replyTo([order, line])).toMatch(/^I keep no deposits or payments: the figures stand as they were\./),
  );
  it('“how much is left to pay” is what it comes to', async () => {
    const reply = await replyTo([order, 'how much is left to pay']);
    expect(reply).toMatch(/^£300\.00 in all/);
    expect(reply).toContain('I keep no deposits or payments');
  });
});

describe('a discount in percent', () => {
  it.each(['10% off for cash', 'mates rates 15% off', 'give her 10% off', 'can we do 10% off for cash?'])('%s', async (line) =>
    expect(await replyTo([order, line])).toMatch(/^I take off no discounts: the figures stand as they were\./),
  );
  it.each([
    [order, '10% off for cash', '10 % off £300.00 would be £270.00: say “270.00 in all”'],
    ['37 bouts at 14.35 inc', '7.5% off for cash', '7.5 % off £530.95 would be £491.13 (rounded): say “491.13 in all”'],
  ])('of %s, %s is worked out, and said to be rounded where it was', async (ordered, line, said) =>
    expect(await replyTo([ordered, line])).toContain(said),
  );
  it('in yen, which has no smaller coin, names a sum that can be said back', async () => {
    const said = ['7 bouts at 1435 inc tax 10%', '7.5% off for cash'];
    // 10,045 × 0.925 = 9,291.625
    expect(await replyTo(said, plainStudio('JP'))).toContain('would be ¥9,292 (rounded): say “9292 in all”');
    expect(await replyTo([...said, '9292 in all'], plainStudio('JP'))).toContain('9,292');
  });
  it('in a question for the total is not passed over', async () => {
    const reply = await replyTo([order, 'whats the total with 10% off']);
    expect(reply).toMatch(/^£300\.00 in all/);
    expect(reply).toContain('I take off no discounts');
  });
});
