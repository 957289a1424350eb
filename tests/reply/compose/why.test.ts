// "Why?" shows the words behind each fact, what was assumed and what was left unread.

import { expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

it('names the words of each fact, then what nobody said, then what was not used', async () => {
  const shown = await replyTo(['40 lapel pieces at 25 inc tax plus 3 gizmos', 'event 3/4', 'why?']);
  expect(shown).toMatch(/^What I read, and from which words:/);
  expect(shown).toContain('“40 lapel pieces”: 40 buttonholes');
  expect(shown).toContain('“3/4”: event Sat 3 April 2027 (year assumed) (day first assumed)');
  expect(shown).toMatch(/Assumed: .*tax rate of your region; room for fresh work.*\./);
  expect(shown).toContain('Not used: “3”.');
});

it('names the usual minutes of a kind that has none of its own', async () => {
  expect(await replyTo(['6 wrist corsages at 42 inc, dried, event 3 April', 'why?'])).toMatch(/Assumed: .*the usual bench minutes\./);
});

it('forgets what was not used with the message it was in', async () => {
  expect(await replyTo(['40 lapel pieces at 25 inc tax plus 3 gizmos', 'undo', '12 corsages', 'why?'])).not.toContain('Not used');
});

it('says so where nothing was read', async () => {
  expect(await replyTo(['why?'])).toContain('I have read nothing in this thread yet.');
});
