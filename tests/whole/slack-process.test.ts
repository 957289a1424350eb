// The whole bot against a stand-in for Slack: the main job over both transports, killed at any moment, and stopped cleanly.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Bot, deliver, startBot, until } from '../support/bot-process.ts';
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
  it('is answered the same, in one thread, over signed HTTP and over Socket Mode', { timeout: 60_000 }, async () => {
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

  it('logs ids and outcomes and no word of a message', { timeout: 30_000 }, async () => {
    const http = await start('http');
    await deliver(http.port ?? 0, order);
    await until(() => answers().length === 1, 'the price');
    const log = http.lines.join('\n');
    expect(log).toContain('"what":"message"');
    expect(log).not.toMatch(/lapel|inc tax|25\.00|xoxb|made-up/);
  });

  it('stops within five seconds when asked', { timeout: 30_000 }, async () => {
    const http = await start('http');
    const asked = Date.now();
    expect(await http.stop()).toBe(0);
    expect(Date.now() - asked).toBeLessThan(5_000);
  });
});

describe('killed at any moment', () => {
  /** Sends as Slack does: again until somebody says 200, with the same event id. */
  const sendUntilTaken = async (body: object): Promise<void> => {
    for (let tries = 0; tries < 20; tries += 1) {
      if (bot?.port !== undefined && (await deliver(bot.port, body)) === 200) return;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    throw new Error('nobody took the delivery');
  };

  it('answers each message exactly once', { timeout: 120_000 }, async () => {
    const moments = [0, 5, 10, 20, 60, 300];
    for (const [index, moment] of moments.entries()) {
      const running = await start('http');
      const ts = `18000001${index}0.000100`;
      const body = mention('<@UBOT> 12 corsages at 30 inc', { ts });
      const first = deliver(running.port ?? 0, body);
      await new Promise((resolve) => setTimeout(resolve, moment));
      await running.kill();
      const taken = (await first) === 200;
      await start('http');
      if (!taken) await sendUntilTaken(body);
      await until(() => slack.messages.some((one) => one.thread_ts === ts), `an answer to message ${index}`);
      await bot?.stop();
      expect(slack.messages.filter((one) => one.thread_ts === ts).map((one) => one.text.split('\n')[0])).toEqual([
        '12 corsages at £30.00, VAT included: £3.21 of stems each, plus £1.60 sundries.',
      ]);
    }
  });
});
