// Wearers said against the list there is: more, fewer or none of them; what the list does not have is refused.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const list = 'groom, 4 ushers, 2 dads in bouts';

describe('wearers said against the list', () => {
  it.each([
    ['one usher less', /^6 wearers, 7 pieces[\s\S]*3 ushers: buttonholes/],
    ['2 of the ushers have pulled out', /^5 wearers, 7 pieces[\s\S]*2 ushers: buttonholes/],
    ['another usher', /^8 wearers, 7 pieces[\s\S]*5 ushers: buttonholes/],
    ['no dads after all', /^5 wearers, 7 pieces(?![\s\S]*fathers)/],
  ])('%s', async (said, reply) => {
    expect(await replyTo([list, said])).toMatch(reply);
  });

  it.each([
    ['2 fewer groomsmen', 'The list of wearers has no groomsmen. It has: 1 groom, 4 ushers, 2 fathers.'],
    ['5 fewer ushers', 'The list of wearers has no 5 ushers. It has: 1 groom, 4 ushers, 2 fathers.'],
  ])('%s takes nobody off', async (said, reply) => {
    expect(await replyTo([list, said])).toContain(reply);
  });

  it('nobody comes off a list of nobody', async () => {
    expect(await replyTo(['12 bouts', 'one usher less'])).toContain('Nobody is on the list of wearers yet');
  });
});
