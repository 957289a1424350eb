// The real Bolt receivers, in both modes, against a stand-in for Slack on this machine.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type SlackHost, startSlack } from '../../../src/hosts/slack/start-slack.ts';
import { eventCallback, mention, message, postDelivery, signature, signingSecret, tap } from '../../support/slack-deliveries.ts';
import { memoryInbox, memoryLog } from '../../support/slack-inbox.ts';
import { type StandIn, startStandIn } from '../../support/slack-stand-in.ts';

let slack: StandIn;
let desk: ReturnType<typeof memoryInbox>;
let log: ReturnType<typeof memoryLog>;
let host: SlackHost | undefined;

beforeEach(async () => {
  slack = await startStandIn();
  desk = memoryInbox();
  log = memoryLog();
});
afterEach(async () => {
  clock = Date.now;
  await host?.stop();
  host = undefined;
  await slack.close();
});

const botToken = 'xoxb-test-1';
const began = Date.now();
/** Our patience with a busy store runs on this clock: five times as fast, so that the tests need not wait it out. */
const hurried = (): number => began + 5 * (Date.now() - began);
let clock: () => number = Date.now;

const start = async (mode: 'socket' | 'http'): Promise<SlackHost> => {
  const transport = mode === 'socket' ? ({ mode, appToken: 'xapp-test-1' } as const) : ({ mode, signingSecret, port: 0 } as const);
  host = await startSlack({
    settings: { botToken, transport, apiUrl: slack.apiUrl },
    inbox: desk.inbox,
    threads: desk.threads,
    log: log.log,
    now: () => clock(),
  });
  return host;
};

const until = async (what: () => boolean, within = 4_000): Promise<void> => {
  const end = Date.now() + within;
  while (!what()) {
    if (Date.now() > end) throw new Error('it did not happen in time');
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
};
const acked = (id: string): boolean => slack.acks.some(({ envelope_id }) => envelope_id === id);

/** Sends a delivery the way the mode does, and says whether Slack was told we have it. */
const deliver = async (mode: 'socket' | 'http', delivery: object, retry = 0): Promise<boolean> => {
  if (mode === 'http') {
    const again = retry === 0 ? {} : { 'x-slack-retry-num': String(retry), 'x-slack-retry-reason': 'http_timeout' };
    return (await postDelivery(host?.port ?? 0, delivery, again as Record<string, string>)).ok;
  }
  const id = slack.send('event' in delivery ? 'events_api' : 'interactive', delivery, { retry_attempt: retry });
  await until(() => acked(id), 1_500).catch(() => undefined);
  return acked(id);
};

describe.each(['socket', 'http'] as const)('by %s', (mode) => {
  test('a mention opens a thread, and what follows in it needs no mention', async () => {
    await start(mode);
    expect(await deliver(mode, mention('<@UBOT> 40 lapel pieces at 25 inc tax'))).toBe(true);
    expect(await deliver(mode, message('dried, event 14 March', { ts: '1800000030.000100', thread_ts: '1800000000.000100' }))).toBe(true);
    expect(await deliver(mode, message('who has the van on Friday?', { ts: '1800000031.000100' }))).toBe(true);
    expect(desk.kept.map(({ text, thread, addressed }) => [text, thread, addressed])).toEqual([
      ['40 lapel pieces at 25 inc tax', '1800000000.000100', true],
      ['dried, event 14 March', '1800000000.000100', false],
    ]);
    expect(desk.works()).toBe(2);
  });

  test('a retry, and the message that comes along with a mention, are the same message', async () => {
    await start(mode);
    const first = message('<@UBOT> 40 bouts');
    await deliver(mode, first);
    await deliver(mode, first, 1);
    await deliver(mode, mention('<@UBOT> 40 bouts'));
    expect(desk.kept).toHaveLength(1);
  });

  test('a message that cannot be kept is not acknowledged, and the retry is', async () => {
    clock = hurried;
    await start(mode);
    desk.busyFor(20_000);
    const delivery = mention('<@UBOT> 12 bouts');
    expect(await deliver(mode, delivery)).toBe(false);
    expect(desk.kept).toHaveLength(0);
    desk.busyFor(0);
    expect(await deliver(mode, delivery, 1)).toBe(true);
    expect(desk.kept.map(({ text }) => text)).toEqual(['12 bouts']);
  });

  test('a store that is busy for a moment is waited for, and the order of arrival is kept', async () => {
    await start(mode);
    desk.busyFor(600);
    const began = Date.now();
    const all = Array.from({ length: 20 }, (_each, place) => message(`<@UBOT> ${place + 1} bouts`, { ts: `1800000000.0001${place + 10}` }));
    const answers = await Promise.all(all.map((one) => deliver(mode, one)));
    expect(answers.every(Boolean)).toBe(true);
    expect(Date.now() - began).toBeLessThan(3_000); // Slack's patience
    expect(desk.kept).toHaveLength(20);
    if (mode === 'socket') expect(desk.kept.map(({ text }) => text)).toEqual(all.map((_each, place) => `${place + 1} bouts`));
  });

  test('a tapped button is kept once however often it is tapped', async () => {
    await start(mode);
    expect(await deliver(mode, tap('reply|made all|0|s1', { value: 'day-7' }))).toBe(true);
    expect(await deliver(mode, tap('reply|made all|0|s1', { value: 'day-7' }, '1800000100.900001'))).toBe(true);
    expect(desk.kept.map((one) => one.tap)).toEqual([{ action: 'made all', value: 'day-7' }]);
  });

  test('other deliveries are acknowledged and change nothing', async () => {
    await start(mode);
    expect(await deliver(mode, eventCallback({ type: 'member_joined_channel', user: 'U2', channel: 'C1' }))).toBe(true);
    expect(await deliver(mode, message('hello', { bot_id: 'B2' }))).toBe(true);
    expect(desk.kept).toHaveLength(0);
  });

  test('neither words nor tokens reach the log', async () => {
    clock = hurried;
    await start(mode);
    await deliver(mode, mention('<@UBOT> the secret bride wants 40 at 25'));
    desk.busyFor(20_000);
    await deliver(mode, mention('<@UBOT> the secret bride wants 41', { ts: '1800000002.000001' }));
    expect(log.lines.length).toBeGreaterThan(0);
    expect(log.lines.join('\n')).not.toMatch(/secret|xox|xapp|signing/);
  });

  test('stops cleanly, and once', async () => {
    const running = await start(mode);
    expect(running.healthy()).toBe(true);
    const began = Date.now();
    await running.stop();
    host = undefined;
    expect(Date.now() - began).toBeLessThan(2_500);
    expect(running.healthy()).toBe(false);
  });
});

describe('Socket Mode', () => {
  test.each(['refresh', 'cut'] as const)('reconnects when the connection ends (%s), well within Slack’s retry', async (how) => {
    const running = await start('socket');
    const began = Date.now();
    slack.disconnect(how);
    await until(() => slack.connections() === 2 && running.healthy());
    expect(Date.now() - began).toBeLessThan(3_000);
    await deliver('socket', mention('<@UBOT> 40 bouts'));
    expect(desk.kept).toHaveLength(1);
  });

  test('a message whose acknowledgement is cut off is not kept twice', async () => {
    const running = await start('socket');
    const delivery = mention('<@UBOT> 40 bouts');
    desk.busyFor(400);
    slack.send('events_api', delivery);
    await new Promise((resolve) => setTimeout(resolve, 100));
    slack.disconnect('cut');
    await until(() => slack.connections() === 2 && running.healthy());
    expect(await deliver('socket', delivery, 1)).toBe(true);
    expect(desk.kept).toHaveLength(1);
  });

  test('keeps trying while Slack is away, and comes back', async () => {
    const running = await start('socket');
    slack.failNext('apps.connections.open', { status: 503 }, { error: 'internal_error' }, { lost: 'call' });
    slack.disconnect('cut');
    await until(() => !running.healthy());
    await until(() => slack.connections() === 2 && running.healthy(), 10_000);
  });

  test('a payload without an event does not end the program', async () => {
    await start('socket');
    slack.send('events_api', { type: 'app_rate_limited', team_id: 'T1', minute_rate_limited: 1800000000 });
    expect(await deliver('socket', mention('<@UBOT> 40 bouts'))).toBe(true);
  });

  test('each token goes only where it belongs', async () => {
    await start('socket');
    slack.disconnect('refresh');
    await until(() => slack.connections() === 2);
    expect(new Set(slack.callsOf('apps.connections.open').map(({ token }) => token))).toEqual(new Set(['xapp-test-1']));
    expect(new Set(slack.callsOf('auth.test').map(({ token }) => token))).toEqual(new Set([botToken]));
  });
});

describe('HTTP', () => {
  test('says that it is well', async () => {
    const { port } = await start('http');
    const answer = await fetch(`http://127.0.0.1:${port}/health`);
    expect([answer.status, await answer.text()]).toEqual([200, 'well']);
  });

  test('refuses what is not signed, wrongly signed or old', async () => {
    const { port } = await start('http');
    const body = JSON.stringify(mention('<@UBOT> 40 bouts'));
    const now = Math.floor(Date.now() / 1000);
    const send = async (headers: Record<string, string>): Promise<number> =>
      (
        await fetch(`http://127.0.0.1:${port}/slack/events`, {
          method: 'POST',
          body,
          headers: { 'content-type': 'application/json', ...headers },
        })
      ).status;
    const signed = (at: number, secret?: string) => ({
      'x-slack-request-timestamp': String(at),
      'x-slack-signature': signature(body, at, secret),
    });
    expect(await send({})).toBe(401);
    expect(await send(signed(now, 'another secret'))).toBe(401);
    expect(await send(signed(now - 301))).toBe(401);
    expect(desk.kept).toHaveLength(0);
    expect(await send(signed(now))).toBe(200);
    expect(desk.kept).toHaveLength(1);
  });

  test('answers Slack’s check of the address', async () => {
    const { port } = await start('http');
    const answer = await postDelivery(port ?? 0, { type: 'url_verification', challenge: 'abc', event: undefined });
    expect(await answer.text()).toContain('abc');
  });
});

describe('a start that cannot succeed says why', () => {
  const starting = (mode: 'socket' | 'http') =>
    start(mode).then(
      () => 'started',
      (error: { code?: string; message: string }) => error,
    );

  test.each([
    ['auth.test', { error: 'invalid_auth' }, 'bot-token-refused'],
    ['auth.test', { error: 'token_revoked' }, 'bot-token-refused'],
    ['auth.test', { status: 503 }, 'slack-unreachable'],
    ['apps.connections.open', { error: 'invalid_auth' }, 'app-token-refused'],
    ['apps.connections.open', { error: 'missing_scope' }, 'app-token-lacks-scope'],
    ['apps.connections.open', { lost: 'call' }, 'slack-unreachable'],
  ] as const)('%s %o', async (method, fault, code) => {
    slack.failNext(method, fault);
    expect(await starting('socket')).toMatchObject({ code, message: expect.not.stringMatching(/xoxb-test|xapp-test/) });
  });

  test('the port is taken', async () => {
    const first = await start('http');
    const settings = { botToken, transport: { mode: 'http' as const, signingSecret, port: first.port ?? 0 }, apiUrl: slack.apiUrl };
    const second = startSlack({ settings, inbox: desk.inbox, threads: desk.threads, log: log.log, now: Date.now });
    await expect(second).rejects.toMatchObject({ code: 'port-in-use' });
  });
});
