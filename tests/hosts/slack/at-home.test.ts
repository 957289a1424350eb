// Home, forms, the command and shortcuts, through the real Bolt receivers.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { stampOf } from '../../../src/hosts/slack/tap-to-message.ts';
import { messageFaults, viewFaults } from '../../support/block-kit-limits.ts';
import { command, globalShortcut, homeOpened, homeTap, messageShortcut, submitted, tap } from '../../support/slack-deliveries.ts';
import { memoryDesk, weekOf } from '../../support/slack-desk.ts';
import { type Mode, type Running, runSlackHost, until } from '../../support/slack-running.ts';

let running: Running;
afterEach(() => running.stop());
const start = async (mode: Mode, events = 3): Promise<Running> => {
  running = await runSlackHost(mode, Date.now, memoryDesk(weekOf(events)));
  return running;
};

type View = Readonly<Record<string, unknown>> & { readonly blocks: readonly unknown[]; readonly private_metadata?: string };
const viewsOf = (method: string): View[] => running.slack.callsOf(method).map(({ args }) => JSON.parse(args['view'] ?? '{}') as View);
const lastView = async (method: string): Promise<View> => {
  await until(() => viewsOf(method).length > 0);
  const view = viewsOf(method).at(-1);
  if (!view) throw new Error('no view');
  expect(viewFaults(view)).toEqual([]);
  return view;
};

describe.each<Mode>(['socket', 'http'])('by %s', (mode) => {
  test('Home is drawn when it is opened, with 80 events', async () => {
    await start(mode, 80);
    await running.deliver(homeOpened());
    expect(JSON.stringify(await lastView('views.publish'))).toContain('Page 1 of 4, 80 events');
  });
  test('the command answers its asker alone', async () => {
    await start(mode);
    const told = await running.deliver(command('40 bouts at 25 &amp; tax'));
    expect(told.acked).toBe(true);
    expect(running.checked).toEqual(['40 bouts at 25 & tax']);
    const answer = told.body as { response_type: string; text: string; blocks: unknown[] };
    expect(answer.response_type).toBe('ephemeral');
    expect(messageFaults(answer)).toEqual([]);
    expect(JSON.stringify(answer.blocks)).toContain('Put it in a thread');
    expect(JSON.stringify(answer.blocks)).not.toContain('Undo');
    expect(running.inbox.kept).toEqual([]);
  });
  test('"read as an event" keeps the message before Slack is told', async () => {
    await start(mode);
    expect((await running.deliver(messageShortcut({ text: '40 bouts &amp; 2 corsages' }))).acked).toBe(true);
    await running.deliver(messageShortcut({ text: '40 bouts &amp; 2 corsages' }));
    expect(running.inbox.kept.map(({ text, author, thread }) => [text, author, thread])).toEqual([
      ['40 bouts & 2 corsages', 'UMOIRA', '1800000000.000100'],
    ]);
  });
  test('a form with an impossible number is sent back, and a good one counts once', async () => {
    await start(mode);
    await running.deliver(tap(`reply|made some|0|${stampOf('r')}`, { value: 'day 7' }));
    const { private_metadata } = await lastView('views.open');
    const refused = await running.deliver(submitted('number_form', { number: { value: '2.5' } }, { private_metadata }));
    expect(refused.body).toEqual({ response_action: 'errors', errors: { number: expect.stringContaining('whole number') } });
    expect(running.inbox.kept).toEqual([]);
    await running.deliver(submitted('number_form', { number: { value: '12' } }, { private_metadata }));
    await running.deliver(submitted('number_form', { number: { value: '12' } }, { private_metadata }));
    expect(running.inbox.kept.map((one) => [one.tap, one.thread])).toEqual([
      [{ action: 'made some', value: 'day 7\n12' }, '1800000000.000100'],
    ]);
    await running.deliver(submitted('number_form', { number: { value: '12' } }, { private_metadata, id: 'V9' }));
    expect(running.inbox.kept).toHaveLength(2); // said again later: another twelve
  });
});

describe('Home', () => {
  beforeEach(() => start('socket', 45));

  test('the messages tab and other workspaces leave it alone', async () => {
    await running.deliver(homeOpened({ tab: 'messages' }));
    await running.deliver({ ...homeOpened(), team_id: 'T9' });
    expect(viewsOf('views.publish')).toEqual([]);
  });
  test('a tick counts in the event’s own thread, once, and Home is drawn again', async () => {
    const value = JSON.stringify(['C1', '1800000010.000100', '2027-03-08 0']);
    await running.deliver(homeTap('home|tick|0', value));
    await running.deliver(homeTap('home|tick|0', value));
    expect(running.inbox.kept.map((one) => [one.kind, one.tap?.action, one.tap?.value, one.thread, one.author])).toEqual([
      ['tap', 'made all', '2027-03-08 0', '1800000010.000100', 'UAILSA'],
    ]);
    await lastView('views.publish');
  });
  test('pages turn', async () => {
    await running.deliver(homeTap('home|page|2', '2'));
    expect(JSON.stringify(await lastView('views.publish'))).toContain('Page 3 of 3');
  });
  test('a view that went stale is read and published again', async () => {
    running.slack.failNext('views.publish', { error: 'hash_conflict' });
    await running.deliver(homeTap('home|page|1', '1'));
    await until(() => viewsOf('views.publish').length === 2);
    expect(running.slack.callsOf('views.publish').map(({ args }) => args['hash'])).toEqual(['h1', undefined]);
  });
  test.each([
    ['a guest', { is_restricted: true }],
    ['somebody of elsewhere', { team_id: 'T9' }],
    ['somebody who left', { deleted: true }],
  ])('%s sees no events', async (_who, facts) => {
    running.slack.people.set('UAILSA', facts);
    await running.deliver(homeOpened());
    expect(JSON.stringify(await lastView('views.publish'))).not.toContain('Wedding');
  });
});

test('a member of an organisation with several workspaces sees Home where they belong to it', async () => {
  await start('socket');
  running.slack.people.set('UAILSA', { team_id: 'T5', enterprise_user: { teams: ['T5', 'T1'] } });
  await running.deliver(homeOpened());
  expect(JSON.stringify(await lastView('views.publish'))).toContain('Wedding');
});

describe('the studio form', () => {
  beforeEach(() => start('socket'));
  const good = {
    name: { value: 'The Net Loft' },
    region: { value: 'gb' },
    time_zone: { value: 'Europe/London' },
    currency: { value: 'gbp' },
    labour_rule: { selected_option: { value: 'out of the price' } },
    reminder_at: { selected_time: '07:30' },
    reminder_channel: { selected_conversation: 'C7' },
  };

  test('opens from Home and from the command, and is saved', async () => {
    await running.deliver(homeTap('home|set up'));
    await lastView('views.open');
    await running.deliver(command('set up'));
    await until(() => viewsOf('views.open').length === 2);
    expect((await running.deliver(submitted('setup_form', good))).body).toBeUndefined();
    expect(running.saved).toEqual([
      {
        name: 'The Net Loft',
        region: 'GB',
        timeZone: 'Europe/London',
        currency: 'GBP',
        labour: { rule: 'out of the price' },
        reminder: { at: '07:30', channel: 'C7' },
      },
    ]);
  });
  test('names the fields that are wrong, and saves nothing', async () => {
    const told = await running.deliver(submitted('setup_form', { ...good, time_zone: { value: 'Leith' }, wage: { value: '0' } }));
    expect(told.body).toEqual({ response_action: 'errors', errors: { time_zone: expect.any(String), wage: expect.any(String) } });
    expect(running.saved).toEqual([]);
  });
  test('is not for guests, whichever way they came to it', async () => {
    running.slack.people.set('UAILSA', { is_ultra_restricted: true });
    await running.deliver(homeTap('home|set up'));
    expect((await running.deliver(command('setup'))).body).toMatchObject({ text: expect.stringContaining('members') });
    expect((await running.deliver(submitted('setup_form', good))).body).toMatchObject({ response_action: 'errors' });
    expect([viewsOf('views.open'), running.saved]).toEqual([[], []]);
  });
  test('a trigger that came too late is told, and nothing else happens', async () => {
    running.slack.failNext('views.open', { error: 'expired_trigger_id' });
    await running.deliver({ ...tap('reply|set price|0|s', { value: 'x' }), response_url: running.slack.responseUrl });
    await until(() => running.slack.responses.length > 0);
    expect(running.slack.responses[0]).toMatchObject({
      response_type: 'ephemeral',
      text: expect.stringContaining('once more'),
      replace_original: false,
    });
  });
});

describe('a new event without a message of one’s own', () => {
  beforeEach(() => start('socket'));

  test('from the private answer into a thread', async () => {
    const tapped = tap('check|thread', { value: '40 bouts <!channel> *at* 25' });
    await running.deliver({ ...tapped, response_url: running.slack.responseUrl });
    await until(() => running.slack.responses.length > 0);
    const [root] = running.slack.messages;
    expect(root?.text).toBe('New event: 40 bouts &lt;!channel&gt; *at* 25');
    expect(running.inbox.kept.map(({ thread, author, text, addressed }) => [thread, author, text, addressed])).toEqual([
      [root?.ts, 'UAILSA', '40 bouts <!channel> *at* 25', true],
    ]);
  });
  test('from the global shortcut', async () => {
    await running.deliver(globalShortcut());
    await lastView('views.open');
    const filled = { where: { selected_conversation: 'C5' }, what: { value: '8 corsages at 35' } };
    expect((await running.deliver(submitted('new_event', filled))).body).toBeUndefined();
    expect(running.inbox.kept.map(({ channel, text }) => [channel, text])).toEqual([['C5', '8 corsages at 35']]);
  });
  test('in a channel we are not in, the form says so', async () => {
    running.slack.failNext('chat.postMessage', { error: 'not_in_channel' });
    const filled = { where: { selected_conversation: 'C5' }, what: { value: '8 corsages at 35' } };
    expect((await running.deliver(submitted('new_event', filled))).body).toMatchObject({
      response_action: 'errors',
      errors: { where: expect.stringContaining('/invite') },
    });
    expect(running.inbox.kept).toEqual([]);
  });
});
