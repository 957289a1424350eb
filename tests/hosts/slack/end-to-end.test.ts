// What holds in both modes, through the real Bolt receivers, against a stand-in for Slack on this machine.

import { afterEach, describe, expect, test } from 'vitest';
import { inGoodTime } from '../../support/in-good-time.ts';
import { eventCallback, mention, message, tap } from '../../support/slack-deliveries.ts';
import { hurried, type Mode, type Running, runSlackHost } from '../../support/slack-running.ts';

let running: Running;
afterEach(() => running.stop());
const start = async (mode: Mode, now?: () => number): Promise<Running> => {
  running = await runSlackHost(mode, now);
  return running;
};
/** Whether Slack was told that we have it. */
const told = async (delivery: object, retry = 0): Promise<boolean> => (await running.deliver(delivery, retry)).acked;

describe.each(['socket', 'http'] as const)('by %s', (mode) => {
  test('a mention opens a thread, and what follows in it needs no mention', async () => {
    await start(mode);
    expect(await told(mention('<@UBOT> 40 lapel pieces at 25 inc tax'))).toBe(true);
    expect(await told(message('dried, event 14 March', { ts: '1800000030.000100', thread_ts: '1800000000.000100' }))).toBe(true);
    expect(await told(message('who has the van on Friday?', { ts: '1800000031.000100' }))).toBe(true);
    expect(running.inbox.kept.map(({ text, thread, addressed }) => [text, thread, addressed])).toEqual([
      ['40 lapel pieces at 25 inc tax', '1800000000.000100', true],
      ['dried, event 14 March', '1800000000.000100', false],
    ]);
    expect(running.inbox.works()).toBe(2);
  });

  test('a retry, and the message that comes along with a mention, are the same message', async () => {
    await start(mode);
    const first = message('<@UBOT> 40 bouts');
    await told(first);
    await told(first, 1);
    await told(mention('<@UBOT> 40 bouts'));
    expect(running.inbox.kept).toHaveLength(1);
  });

  test('a message that cannot be kept is not acknowledged, and the retry is', async () => {
    await start(mode, hurried());
    running.inbox.busyFor(20_000);
    const delivery = mention('<@UBOT> 12 bouts');
    expect(await told(delivery)).toBe(false);
    expect(running.inbox.kept).toHaveLength(0);
    running.inbox.busyFor(0);
    expect(await told(delivery, 1)).toBe(true);
    expect(running.inbox.kept.map(({ text }) => text)).toEqual(['12 bouts']);
  });

  test('a store that is busy for a moment is waited for, and the order of arrival is kept', async () => {
    await start(mode);
    running.inbox.busyFor(600);
    const began = Date.now();
    const all = Array.from({ length: 20 }, (_each, place) => message(`<@UBOT> ${place + 1} bouts`, { ts: `1800000000.0001${place + 10}` }));
    const answers = await Promise.all(all.map((one) => told(one)));
    expect(answers.every(Boolean)).toBe(true);
    inGoodTime(Date.now() - began, 3_000); // Slack's patience
    expect(running.inbox.kept).toHaveLength(20);
    if (mode === 'socket') expect(running.inbox.kept.map(({ text }) => text)).toEqual(all.map((_each, place) => `${place + 1} bouts`));
  });

  test('a tapped button is kept once however often it is tapped', async () => {
    await start(mode);
    expect(await told(tap('reply|made all|0|s1', { value: 'day-7' }))).toBe(true);
    expect(await told(tap('reply|made all|0|s1', { value: 'day-7' }, '1800000100.900001'))).toBe(true);
    expect(running.inbox.kept.map((one) => one.tap)).toEqual([{ action: 'made all', value: 'day-7' }]);
  });

  test('a tap in a channel shared with another organisation is marked, as its messages are', async () => {
    await start(mode);
    await told({ ...message('<@UBOT> 12 bouts'), is_ext_shared_channel: true });
    await told(tap('reply|show working|0|s1', { value: 'x' }));
    expect(running.inbox.kept.map(({ shared }) => shared)).toEqual([true, true]);
  });

  test('other deliveries are acknowledged and change nothing', async () => {
    await start(mode);
    expect(await told(eventCallback({ type: 'member_joined_channel', user: 'U2', channel: 'C1' }))).toBe(true);
    expect(await told(message('hello', { bot_id: 'B2' }))).toBe(true);
    expect(running.inbox.kept).toHaveLength(0);
  });

  test('neither words nor tokens reach the log', async () => {
    await start(mode, hurried());
    await told(mention('<@UBOT> the secret bride wants 40 at 25'));
    running.inbox.busyFor(20_000);
    await told(mention('<@UBOT> the secret bride wants 41', { ts: '1800000002.000001' }));
    expect(running.log.lines.length).toBeGreaterThan(0);
    expect(running.log.lines.join('\n')).not.toMatch(/secret|xox|xapp|signing/);
  });

  test('stops cleanly, and once', async () => {
    const { host } = await start(mode);
    expect(host.healthy()).toBe(true);
    const began = Date.now();
    await Promise.all([host.stop(), host.stop()]);
    inGoodTime(Date.now() - began, 2_500);
    expect(host.healthy()).toBe(false);
  });
});
