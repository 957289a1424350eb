// One price or one number with its price, tried on the order: nothing of it is dropped, and yes keeps what was tried.

import { describe, expect, test } from 'vitest';
import { talk } from '../../support/converse.ts';

describe('a number and a sum', () => {
  test.each([
    ['can i do 20 for 13', '£260.00', 'Buttonholes: £15.00 → £13.00 each'],
    ['what about 20 bouts for £13', '£260.00', 'Buttonholes: £15.00 → £13.00 each'],
    ['could we do 20 for 13 each', '£260.00', 'Buttonholes: £15.00 → £13.00 each'],
    ['can we do 20 for 280', '£280.00', 'Buttonholes: 24 → 20'],
    ['can we do 20 for 260 all in', '£260.00', 'Buttonholes: 24 → 20'],
  ])('%s', async (said, sum, kept) => {
    const tried = await talk(['24 bouts at 15', said]);
    expect(tried).toContain(sum);
    expect(tried).toContain('nothing in this thread has changed');
    const yes = await talk(['24 bouts at 15', said, 'yes', 'total?']);
    expect(yes).toContain(kept);
    expect(yes).toContain(`${sum} in all`);
  });
  test('that is near to neither is asked about', async () => {
    expect(await talk(['24 bouts at 15', 'can we do 20 for 60'])).toContain('Is £60.00 for each, or for all of them?');
  });
  test('a day, an hour or guests are no sum', async () => {
    for (const said of ['can we do 20 for 13 march', 'can we do 20 for 2pm', 'can we do 20 for 13 people'])
      expect(await talk(['24 bouts at 15', said])).not.toContain('£13.00');
  });
});

describe('one price', () => {
  test.each(['try 13', 'try 13 each', 'try it at 13', 'try £13', 'try bouts 13'])('%s', async (said) => {
    expect(await talk(['20 bouts at 15', said])).toMatch(/20 buttonholes at £13\.00[\s\S]*£260\.00/);
    expect(await talk(['20 bouts at 15', said, 'yes', 'total?'])).toContain('£260.00 in all');
  });
  test('of several kinds is asked about, and of one it is tried', async () => {
    const order = '12 bouts at 15, 2 wrist corsages at 32';
    expect(await talk([order, 'try 13'])).toContain('£13.00 for which?');
    expect(await talk([order, 'try the corsages at 30'])).toContain('2 wrist corsages at £30.00');
  });
  test('a number of pieces is no price', async () => {
    expect(await talk(['20 bouts at 15', 'try 18 bouts'])).toContain('18 buttonholes at £15.00');
  });
});
