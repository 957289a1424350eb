// The whole bot against a stand-in for Slack: the main job over both transports, a log without words, and a clean stop.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Bot, deliver, startBot, until } from '../support/bot-process.ts';
import { inGoodTime, timesCount } from '../support/in-good-time.ts';
import { mention, message } from '../support/slack-deliveries.ts';
import { type StandIn, startStandIn } from '../support/slack-stand-in.ts';

let slack: StandIn;
let folder: string;
let bot: Bot | undefined;

beforeEach(async () => {
  slack = await startStandIn();
  folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
});

afterEach(async () => {
  await bot?.kill();
  bot = undefined;
  await slack.close();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (mode: 'http' | 'socket'): Promise<Bot> => {
  bot = await startBot({ mode, apiUrl: slack.apiUrl, store: join(folder, 'studio.sqlite') });
  return bot;
};

const root = '1800000000.000100';
const order = mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root });
const date = message('dried, event 14 March', { ts: '1800000001.000200', thread_ts: root });

const answers = (): readonly string[] => slack.messages.filter((one) => one.thread_ts === root).map((one) => one.text);

describe('the main job in Slack', () => {
  it('is answered the same, in one thread, over signed HTTP and over Socket Mode', { timeout: 180_000 }, async () => {
    const http = await start('http');
    expect(await deliver(http.port ?? 0, order)).toBe(200);
    await until(() => answers().length === 1, 'the price');
    expect(await deliver(http.port ?? 0, date)).toBe(200);
    await until(() => answers().length === 2, 'the calendar');
    const overHttp = answers();
    expect(overHttp[0]).toMatch(/^40 buttonholes at £25\.00, VAT included: £3\.26 of stems each, plus £0\.75 sundries\./);
    expect(overHttp[0]).toContain('£160.26');
    expect(overHttp[1]).toContain('Sun 14 March');
    await http.kill();

    await slack.close();
    slack = await startStandIn();
    rmSync(folder, { recursive: true, force: true });
    folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
    await start('socket');
    slack.send('events_api', order);
    await until(() => answers().length === 1, 'the price');
    slack.send('events_api', date);
    await until(() => answers().length === 2, 'the calendar');
    expect(answers()).toEqual(overHttp);
  });

  it('logs ids and outcomes and no word of a message', { timeout: 180_000 }, async () => {
    const http = await start('http');
    await deliver(http.port ?? 0, order);
    await until(() => answers().length === 1, 'the price');
    const log = http.lines.join('\n');
    expect(log).toContain('"what":"message"');
    expect(log).not.toMatch(/lapel|inc tax|25\.00|xoxb|made-up/);
  });

  it('stops within five seconds when asked, with everything it was told handled and posted, or kept for the next start', {
    timeout: 180_000,
  }, async () => {
    const http = await start('http');
    const threads = Array.from({ length: 30 }, (_, n) => `18000002${String(n).padStart(2, '0')}.000100`);
    const sent = await Promise.all(
      threads.map((ts, n) => deliver(http.port ?? 0, mention('<@UBOT> 12 corsages at 30 inc', { ts, channel: `C${n}` }))),
    );
    expect(new Set(sent)).toEqual(new Set([200]));
    const asked = Date.now();
    expect(await http.stop()).toBe(0);
    inGoodTime(Date.now() - asked, 5_000);
    if (timesCount) expect(http.lines.at(-1)).toContain('"outcome":"drained"');
    expect(http.lines.at(-1)).toMatch(/"outcome":"(drained|cut short)"/);
    // A machine too slow to post it all in that time leaves the rest to the next start.
    if (slack.messages.length < threads.length) await start('http');
    await until(() => slack.messages.length >= threads.length, 'what was left');
    await bot?.stop();
    expect(slack.messages.map((one) => one.thread_ts).toSorted()).toEqual(threads);
  });
});
