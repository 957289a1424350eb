// Plain words behind a list of wearers: one counted again, somebody more, somebody off.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const list = 'groom, best man, 4 ushers';

describe('against the list', () => {
  it.each([
    ['actually 3 ushers', /^5 wearers[\s\S]*3 ushers/],
    ['sorry, only 3 ushers', /^5 wearers/],
    ['no its 5 ushers not 4', /^7 wearers/],
    ['and the mums', /^8 wearers[\s\S]*2 mothers: wrist corsages/],
    ['mums and dads too', /^10 wearers/],
    ['oh and both nans please', /^8 wearers/],
    ['not the best man', /^5 wearers(?![\s\S]*best man)/],
    ['drop the groom', /^5 wearers(?![\s\S]*groom:)/],
    ['and a pageboy', /^7 wearers[\s\S]*pageboy/],
    ['and 2 nans and a pageboy', /^9 wearers/],
    ['and an usher', /^7 wearers[\s\S]*5 ushers/],
  ])('%s', async (said, reply) => expect(await replyTo([list, said])).toMatch(reply));
});

describe('is left unread', () => {
  it.each([
    'and the ushers',
    'groom too',
    'and 2 ushers',
    'actually 2 bridesmaids',
    'and the mums 40 each',
    'and the mums?',
    'not the groom’s',
  ])('%s', async (said) => expect(await replyTo([list, said, 'who wears what?'])).toMatch(/^6 wearers/));
  it.each(['and the mums', 'not the best man', 'actually 3 ushers'])('%s, where nobody is listed', async (said) =>
    expect(await replyTo(['20 bouts at 15 inc', said])).toContain('could not read'),
  );
});
