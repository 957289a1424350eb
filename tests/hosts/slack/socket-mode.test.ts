// Socket Mode alone: connections end, and come back.

import { afterEach, expect, test } from 'vitest';
import { inGoodTime } from '../../support/in-good-time.ts';
import { mention } from '../../support/slack-deliveries.ts';
import { botToken, type Running, runSlackHost, until } from '../../support/slack-running.ts';

let running: Running;
afterEach(() => running.stop());
const start = async (): Promise<Running> => {
  running = await runSlackHost('socket');
  return running;
};
/** Whether Slack was told that we have it. */
const told = async (delivery: object, retry = 0): Promise<boolean> => (await running.deliver(delivery, retry)).acked;

test.each(['refresh', 'cut'] as const)('reconnects when the connection ends (%s), well within Slack’s retry', async (how) => {
  await start();
  const began = Date.now();
  running.slack.disconnect(how);
  await until(() => running.slack.connections() === 2 && running.host.healthy());
  inGoodTime(Date.now() - began, 3_000);
  await told(mention('<@UBOT> 40 bouts'));
  expect(running.inbox.kept).toHaveLength(1);
});

test('a message whose acknowledgement is cut off is not kept twice', async () => {
  await start();
  const delivery = mention('<@UBOT> 40 bouts');
  running.inbox.busyFor(400);
  running.slack.send('events_api', delivery);
  await new Promise((resolve) => setTimeout(resolve, 100));
  running.slack.disconnect('cut');
  await until(() => running.slack.connections() === 2 && running.host.healthy());
  expect(await told(delivery, 1)).toBe(true);
  expect(running.inbox.kept).toHaveLength(1);
});

test('keeps trying while Slack is away, and comes back', async () => {
  await start();
  running.slack.failNext('apps.connections.open', { status: 503 }, { lost: 'call' });
  running.slack.disconnect('cut');
  await until(() => !running.host.healthy());
  await until(() => running.slack.connections() === 2 && running.host.healthy());
});

test('a payload without an event does not end the program', async () => {
  await start();
  running.slack.send('events_api', { type: 'app_rate_limited', team_id: 'T1', minute_rate_limited: 1800000000 });
  expect(await told(mention('<@UBOT> 40 bouts'))).toBe(true);
});

test('each token goes only where it belongs', async () => {
  await start();
  running.slack.disconnect('refresh');
  await until(() => running.slack.connections() === 2);
  expect(new Set(running.slack.callsOf('apps.connections.open').map(({ token }) => token))).toEqual(new Set(['xapp-test-1']));
  expect(new Set(running.slack.callsOf('auth.test').map(({ token }) => token))).toEqual(new Set([botToken]));
});
