// When stems go in water and for how long: the calendar's day, and the hours with their sources.

import { describe, expect, test } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const talk = ['10 bouts at 20 inc, fresh, sat 20 feb 2027', '1 rose, 2 gyp each'];

describe('in water', () => {
  test.each(['when do the roses go in water', 'when do i condition the roses', 'how long should they be in water'])('%s', async (said) => {
    expect(await replyTo([...talk, said])).toMatch(/^In water by Thu 18 February\. 2 to 12 h in water, best overnight/);
  });
  test.each(['is 2 hrs in water enough for the gyp?', 'how long should i condition the gyp'])('%s: its own hours', async (said) => {
    expect(await replyTo([...talk, said])).toContain('Gypsophila: 2 h in water, at least.');
  });
  test('“when is the event” asks for no water', async () => {
    expect(await replyTo([...talk, 'when is the event'])).not.toContain('water');
  });
});

describe('a price and a size with a stroke between them, among other goods', () => {
  test('each keeps its own', async () => {
    const reply = await replyTo([...talk, 'roses £1.10 each, gyp £9/10, ribbon £4 for 25m']);
    expect(reply).toContain('Gypsophila: £9.00 for 10 stems');
    expect(reply).toContain('Ribbon: £4.00 for 25 m');
  });
  test('“roses 14 for 20” may be either, and is asked', async () => {
    expect(await replyTo([...talk, 'gyp 6.50 a bunch of 10, roses 14 for 20'])).toContain('What does “roses 14 for 20” set?');
  });
});
