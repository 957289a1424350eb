// An offer of days answered with a no: what is denied is not taken, and "the sat after" is the later of the two.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

describe('“next sat”, of which two are offered', () => {
  it.each(['no the sat after', 'sorry the sat after', 'the following sat', 'the one after'])('%s', async (said) =>
    expect(await replyTo(['10 bouts at 15 inc, fresh', 'next sat', said, 'when is it'])).toContain('Sat 30 January 2027'),
  );
  it('takes none that is denied', async () =>
    expect(await replyTo(['10 bouts at 15 inc, fresh', 'next sat', 'not the 23rd', 'when is it'])).toContain(
      'Nobody has said when the event is.',
    ));
});

it('puts nobody at the bench on a day that somebody cannot do', async () => {
  const lines = ['10 bouts at 15 inc, fresh, sat 13 march', '2 of us fri 4 hrs'];
  expect(await replyTo([...lines, 'no jo cant do fri'])).not.toContain('At the bench');
  expect(await replyTo([...lines, 'no jo cant do fri', 'fri 12 march'])).toContain('At the bench on Fri 12 March: 2 for 4 h each.');
});
