// Deposits, payments and discounts are kept nowhere, and it is said so.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

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
  it('in a question for the total is not passed over', async () => {
    const reply = await replyTo([order, 'whats the total with 10% off']);
    expect(reply).toMatch(/^£300\.00 in all/);
    expect(reply).toContain('I take off no discounts');
  });
});
