// How many broke, put right: of those just told, of all that broke, or the first word of it.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const begun = ['20 bouts at 14 inc', 'made 8'];

describe('of the two just told', () => {
  it.each([
    ['no only 1 broke', /^7 of 20 buttonholes made, 13 left\./],
    ['sorry only 1 broke', /^7 of 20 buttonholes made, 13 left\./],
    ['nope we only lost one', /^7 of 20 buttonholes made, 13 left\./],
    ['no 3 squashed', /^5 of 20 buttonholes made, 15 left\./],
    ['only 1 broke not 2', /^7 of 20 buttonholes made, 13 left\./],
    // Nothing tells that they are of those.
    ['1 broke', /^5 of 20 buttonholes made, 15 left\./],
    ['only 1 broke', /^What does “only 1 broke” set\?\nSay: 1 broken, not 2 \/ 1 more broken/],
  ])('%s', async (said, reply) => expect(await replyTo([...begun, '2 broke', said])).toMatch(reply));

  it('takes the answer', async () => {
    expect(await replyTo([...begun, '2 broke', 'only 1 broke', '1 broken, not 2'])).toMatch(/^7 of 20 buttonholes made/);
    expect(await replyTo([...begun, '2 broke', 'only 1 broke', '1 more broken'])).toMatch(/^5 of 20 buttonholes made/);
  });
});

it('asks where others broke before', async () => {
  const lines = [...begun, '2 broke', '3 broke', 'no only 1 broke'];
  expect(await replyTo(lines)).toMatch(/^What does “no only 1 broke” set\?\nSay: 1 broken, not 3 \/ 1 broken in all/);
  expect(await replyTo([...lines, '1 broken, not 3'])).toMatch(/^5 of 20 buttonholes made/);
  expect(await replyTo([...lines, '1 broken in all'])).toMatch(/^7 of 20 buttonholes made/);
});

it('is the first word of it where nothing broke yet', async () =>
  expect(await replyTo([...begun, 'no only 1 broke'])).toMatch(/^7 of 20 buttonholes made, 13 left\./));

it('is of the kind that broke', async () =>
  expect(
    await replyTo(['20 bouts at 14 inc, 6 corsages at 30', 'made 8 bouts', 'made 4 corsages', '2 corsages broke', 'no only 1 broke']),
  ).toContain('3 of 6 corsages made'));
