// Who may do what: guests order and ask, members alone change what the studio goes by, and what is kept of an event is theirs to take away or delete.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ThreadKey } from '../../../src/assistant/ports.ts';
import { type AtWork, buttonsOf, root, startAtWork } from '../../support/slack-at-work.ts';
import { command, mention, message, messageShortcut, tap } from '../../support/slack-deliveries.ts';

const key: ThreadKey = { workspace: 'T1', channel: 'C1', thread: root };
let at: AtWork;
beforeEach(async () => {
  at = await startAtWork();
});
afterEach(async () => {
  expect(at.faults()).toEqual([]);
  await at.stop();
});
let said = 0;
const say = (text: string, more: object = {}) => {
  said += 1;
  return at.deliver(message(text, { ts: `18000001${10 + said}.000100`, thread_ts: root, ...more }));
};
const order = async () => {
  await at.deliver(mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }));
  await say('dried, event 14 March');
};
const lastAnswer = (): string => at.answers().at(-1)?.text ?? '';
const packs = () => at.store.storedStudio('T1')?.state.packs ?? [];

describe('a guest', () => {
  const asGuest = { user: 'UGUEST' };
  beforeEach(async () => {
    at.slack.people.set('UGUEST', { is_restricted: true });
    await order();
  });

  test.each(['statice 4.80 wrap of 10', '2 of us on thursday, 4 hrs each', 'we dry statice 10 days'])(
    'may not say for the studio: %s',
    async (words) => {
      await say(words, asGuest);
      expect(lastAnswer()).toContain('Only full members of the studio');
      expect(at.store.studioEntries('T1')).toEqual([]);
    },
  );
  test('may order and correct', async () => {
    await say('and 4 crowns at 65', asGuest);
    expect(at.store.thread(key).state.lines).toHaveLength(2);
  });
  test('may not take back a member’s prices', async () => {
    await say('statice 4.80 wrap of 10');
    await say('undo', asGuest);
    expect(packs()).toHaveLength(1);
  });
  test.each(['forget this event', 'forget this event for good', 'export this event'])('may not have it: %s', async (words) => {
    await say(words, asGuest);
    expect(lastAnswer()).toContain('Only full members');
    expect(at.store.thread(key).version).toBeGreaterThan(0);
    expect(at.slack.messages.filter(({ channel }) => channel === 'UGUEST')).toEqual([]);
  });
  test('is asked about once in a while, not at every message', async () => {
    await say('made 1', asGuest);
    await say('made 2', asGuest);
    expect(at.slack.callsOf('users.info').filter(({ args }) => args['user'] === 'UGUEST')).toHaveLength(1);
  });
});

test('where Slack will not say who somebody is, orders are taken and prices are not', async () => {
  at.slack.failNext('users.info', { error: 'internal_error' }, { error: 'internal_error' }, { error: 'internal_error' });
  await order();
  await say('statice 4.80 wrap of 10');
  expect(at.store.thread(key).state.lines).toHaveLength(1);
  expect(packs()).toEqual([]);
  await say('statice 4.80 wrap of 10');
  expect(packs()).toHaveLength(1);
});

describe('forget this event', () => {
  beforeEach(async () => {
    await order();
    await say('statice 4.80 wrap of 10');
    await say('forget this event');
  });
  const choose = (label: string) => {
    const found = buttonsOf(at.answers().at(-1)).find(({ text }) => text?.text === label);
    return tap(found?.action_id ?? 'none', { value: found?.value });
  };

  test('asks first, and deletes all of it but what belongs to the studio', async () => {
    expect(at.store.thread(key).version).toBeGreaterThan(0);
    const tapped = choose('forget it for good');
    await at.deliver(tapped);
    await at.deliver(tapped);
    expect(lastAnswer()).toMatch(/^Forgotten/);
    expect([at.store.thread(key).version, at.store.entries(key), at.store.knows(key)]).toEqual([0, [], false]);
    expect(packs()).toHaveLength(1);
    const left = at.store.database.prepare('SELECT count(*) FROM inbox WHERE thread = ?').pluck().get(root);
    expect(left).toBe(0);
    const before = at.answers().length;
    await say('made 12');
    expect(at.answers()).toHaveLength(before);
  });
  test('or keeps it', async () => {
    await at.deliver(choose('keep it'));
    expect(at.store.thread(key).state.lines).toHaveLength(1);
    expect(lastAnswer()).toContain('40 buttonholes');
  });
});

test('“export this event” goes to its asker alone, as a file of everything kept', async () => {
  await order();
  await say('export this event');
  expect(lastAnswer()).toContain('to you alone');
  const alone = at.slack.messages.filter(({ channel }) => channel === 'UAILSA');
  expect(alone).toHaveLength(1);
  const [bytes] = [...at.slack.uploads.values()];
  expect(JSON.parse(String(bytes))).toMatchObject({
    key,
    state: { date: '2027-03-14' },
    entries: expect.arrayContaining([expect.objectContaining({ author: 'UAILSA' })]),
  });
  expect(at.slack.callsOf('files.completeUploadExternal').map(({ args }) => [args['channel_id'], args['thread_ts']])).toEqual([
    ['DUAILSA', undefined],
  ]);
});

describe('a channel we never heard of', () => {
  const shared = { is_ext_shared: true };
  test('is asked about before a message in it is read as an event', async () => {
    at.slack.channels.set('C1', shared);
    await at.deliver(messageShortcut({ text: '40 bouts at 25 inc tax', ts: root }));
    expect(at.answers()).toHaveLength(1);
    expect(lastAnswer()).not.toMatch(/[Ll]abour/);
  });
  test('counts as shared where Slack will not say', async () => {
    at.slack.failNext('conversations.info', { error: 'missing_scope' });
    await at.deliver(messageShortcut({ text: '40 bouts at 25 inc tax', ts: root }));
    expect(lastAnswer()).not.toMatch(/[Ll]abour/);
  });
});

describe('first contact', () => {
  beforeEach(async () => {
    await at.stop();
    at = await startAtWork({ isNew: true });
  });
  const offers = () => at.answers().filter((reply) => buttonsOf(reply).some(({ text }) => text?.text === 'Set up the studio'));

  test('offers once to set up the studio, and the button opens the form', async () => {
    await order();
    await say('made 12');
    expect(offers()).toHaveLength(1);
    expect(offers()[0]).toBe(at.answers()[0]);
    const button = buttonsOf(at.answers()[0]).find(({ text }) => text?.text === 'Set up the studio');
    await at.deliver(tap(button?.action_id ?? 'none', {}));
    await expect.poll(() => at.slack.callsOf('views.open').length).toBe(1);
  });
  test('leaves a private check alone', async () => {
    await at.deliver(command('40 bouts at 25 inc tax'));
    await order();
    expect(offers()).toHaveLength(1);
  });
});
