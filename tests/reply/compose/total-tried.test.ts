// "Can we do it for 400 all in?": what all of them come to is tried, or what is missing for it is said.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const order = '40 buttonholes at 12 inc';
const first = async (...said: string[]): Promise<string> => (await replyTo(said)).split('\n')[0] ?? '';

describe('a total is tried', () => {
  it.each(['can we do it for 400 all in', 'could we do the lot for 400', 'what if its 400 all in'])('%s', async (asked) => {
    // 400 / 40 = 10
    const reply = await replyTo([order, asked]);
    expect(reply).toContain('£10.00');
    expect(reply).toContain('nothing in this thread has changed');
  });
  it('a price each as before', async () => {
    expect(await replyTo([order, 'could we do them for 10 each'])).toContain('£400.00');
  });
});

it('tries a price each where only a budget is known', async () => {
  // 30 × 18 = 540
  expect(await first('30 buttonholes, budget 500 inc', 'can we do 18 each')).toMatch(/^30 buttonholes at £18\.00/);
});

it('tries what is to be left for stems', async () => {
  expect(await first(order, 'what should i charge to keep 4 for stems')).toContain('£4.00');
});

describe('something is missing for it', () => {
  it('the pieces', async () => {
    expect(await first('can we do it for 400 all in')).toBe('How many pieces would that be for? Say “16 buttonholes, 400 all in”.');
  });
  it('the price', async () => {
    expect(await first('how much for 18 bouts and 5 corsages')).toBe(
      'At what price each? Say “18 buttonholes at 14 inc”, and I work it out.',
    );
  });
});

it('says of what is owed that payments are not kept', async () => {
  const reply = await replyTo([order, 'what does she still owe']);
  expect(reply).toMatch(/^£480\.00 in all/);
  expect(reply).toContain('I keep no deposits or payments: take off what is paid.');
});
