// Boxing makes nothing: "boxed 12" once some are made is asked about, and where none are made it tells that they are.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '24 buttonholes at 15 inc';

it('where none are made, twelve are', async () => {
  expect(await replyTo([order, 'boxed 12'])).toMatch(/^12 of 24 buttonholes made, 12 left/);
});

describe('once some are made', () => {
  it.each(['boxed 12', '12 boxed', 'packed 12 buttonholes'])('“%s” is asked about', async (said) => {
    expect(await replyTo([order, 'made 22', said])).toContain('Say: 12 of those made / 12 more made');
  });
  it.each([
    [['made 22', 'boxed 12', '12 of those made'], /^22 of 24 buttonholes made, 2 left/],
    [['made 4', 'boxed 12', '12 of those made'], /^12 of 24 buttonholes made, 12 left/],
    [['made 4', 'boxed 12', '12 more made'], /^16 of 24 buttonholes made, 8 left/],
    [['made 4', 'made and boxed 12'], /^16 of 24 buttonholes made, 8 left/],
  ])('%j', async (said, reply) => expect(await replyTo([order, ...said])).toMatch(reply));
});

describe('how many broke', () => {
  it('is said kind by kind, and what is left with it', async () => {
    const reply = await replyTo([order, 'made 10', '2 broke', 'how many broke?']);
    expect(reply).toMatch(/^2 buttonholes broke, as far as I was told\.\n8 of 24 buttonholes made, 16 left/);
  });
  it('none so far', async () => expect(await replyTo([order, 'how many broke?'])).toMatch(/^Nothing has broken, as far as I was told\./));
});
