// A busy studio on real parts: a burst of messages, eighty open events on Home, ticks on the bench's list, and words typed to steer Slack.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { actionId } from '../../../src/hosts/slack/tap-to-message.ts';
import { tickValue } from '../../../src/reply/tick.ts';
import { viewFaults } from '../../support/block-kit-limits.ts';
import { inGoodTime } from '../../support/in-good-time.ts';
import { type AtWork, root, startAtWork } from '../../support/slack-at-work.ts';
import { homeOpened, mention, message, tap } from '../../support/slack-deliveries.ts';
import { until } from '../../support/slack-running.ts';

let at: AtWork;
beforeEach(async () => {
  at = await startAtWork();
});
afterEach(async () => {
  expect(at.faults()).toEqual([]);
  await at.stop();
});

test('200 messages in a burst: Slack is told in time, all are answered once, in order in each thread', { timeout: 180_000 }, async () => {
  const threads = Array.from({ length: 10 }, (_each, place) => `18000100${place + 10}.000100`);
  const began = Date.now();
  const sent = Array.from({ length: 200 }, (_each, place) => {
    const thread = threads[place % threads.length] ?? '';
    const ts = `1800020${String(place).padStart(3, '0')}.000100`;
    return at.slack.send('events_api', message(`<@UBOT> ${place + 1} bouts at 25 inc tax`, { ts, thread_ts: thread }));
  });
  await until(() => sent.every((id) => at.slack.acks.some(({ envelope_id }) => envelope_id === id)));
  inGoodTime(Date.now() - began, 3_000);
  await until(() => at.slack.messages.length >= 200, 40_000);
  await at.settled();
  for (const [place, thread] of threads.entries()) {
    const counts = at.slack.messages
      .filter(({ thread_ts }) => thread_ts === thread)
      .map(({ text }) => Number(/(\d+) buttonhole/.exec(text.split('\n').find((line) => /£25/.test(line)) ?? '')?.[1]));
    expect(counts).toEqual(Array.from({ length: 20 }, (_each, turn) => place + 1 + turn * 10));
  }
});

test('Home with eighty open events', { timeout: 180_000 }, async () => {
  for (let place = 0; place < 80; place += 1) {
    const day = `${(place % 28) + 1} March`;
    const said = mention(`<@UBOT> ${place + 2} lapel pieces at 25 inc tax`, { ts: `1800030${String(place).padStart(3, '0')}.000100` });
    await at.deliver(said);
    await at.deliver(
      message(`dried, event ${day}`, {
        ts: `1800031${String(place).padStart(3, '0')}.000100`,
        thread_ts: `1800030${String(place).padStart(3, '0')}.000100`,
      }),
    );
  }
  await at.deliver(homeOpened());
  await until(() => at.slack.callsOf('views.publish').length > 0);
  const view = JSON.parse(at.slack.callsOf('views.publish')[0]?.args['view'] ?? '{}') as Readonly<Record<string, unknown>>;
  expect(viewFaults(view)).toEqual([]);
  expect(JSON.stringify(view)).toContain('Page 1 of 4, 80 events');
});

describe('a tick on the bench’s list', () => {
  const tick = (thread: string, channel: string) =>
    tickValue({ channel, thread, piece: 'buttonhole', stage: 'finished', day: '2027-03-08' as never, pieces: 12, before: 0 });
  const onBench = {
    channel: { id: 'CBENCH' },
    container: { type: 'message', message_ts: '1800000900.000001' },
    message: { ts: '1800000900.000001' },
  };

  test('counts in the event’s own thread, once', async () => {
    await at.deliver(mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }));
    const delivery = { ...tap(actionId('made all', 0, 's1'), { value: tick(root, 'C1') }), ...onBench };
    await at.deliver(delivery);
    await at.deliver(delivery);
    expect(at.store.thread({ workspace: 'T1', channel: 'C1', thread: root }).state.progress.buttonhole?.made).toBe(12);
    expect(at.answers().at(-1)?.text).toContain('12 of 40');
  });
  test('says nothing of the studio’s own where the event’s channel is shared', async () => {
    await at.deliver({ ...mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }), is_ext_shared_channel: true });
    await at.deliver({ ...tap(actionId('made all', 0, 's1'), { value: tick(root, 'C1') }), ...onBench });
    expect(at.answers().at(-1)?.text).toMatch(/only what a client may see/);
  });
});

test('words typed to steer Slack come back inert, wherever they come back', async () => {
  const words = '<!channel> @here #general *bold* &amp; <https://example.org|a link> \u202eright to left';
  await at.deliver(mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }));
  await at.deliver(message('dried, event 14 March', { ts: '1800000020.000100', thread_ts: root }));
  const typed = [
    `event: ${words}`,
    `for: ${words}, 39 ushers`,
    `3 ${words} each`,
    'why?',
    'summary',
    'open events',
    'export this event',
    words,
  ];
  for (const [place, text] of typed.entries())
    await at.deliver(message(`<@UBOT> ${text}`, { ts: `18000000${30 + place}.000100`, thread_ts: root }));
  await at.deliver(homeOpened());
  await until(() => at.slack.callsOf('views.publish').length > 0);
  const blocks = JSON.stringify([
    at.slack.messages.map((one) => one.blocks),
    at.slack.callsOf('views.publish').map(({ args }) => args['view']),
  ]);
  expect(blocks).not.toMatch(/mrkdwn|"broadcast"|"usergroup"|"type":"user"|\u202e/);
  for (const { text } of at.slack.messages) expect(text).not.toMatch(/<|>|\u202e/);
});
