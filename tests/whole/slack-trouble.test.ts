// Slack in trouble, as the whole program meets it: replies keep, go out once, and the log says why they waited.
// An hour without Slack, and a day of it, are gone through with a clock of their own in tests/clockwork/outbox-pump.test.ts.

import { describe, expect, it } from 'vitest';
import { openStore } from '../../src/store/sqlite-store.ts';
import { logOf, newPlace } from '../support/a-bot.ts';
import { deliver, until } from '../support/bot-process.ts';
import { inGoodTime } from '../support/in-good-time.ts';
import { mention, message } from '../support/slack-deliveries.ts';

const thread = '1800001000.000100';
const order = mention('<@UBOT> 12 corsages at 30 inc', { ts: thread });

describe('Slack in trouble', { timeout: 180_000 }, () => {
  it('down for a while: each reply goes out once, and in order', async () => {
    const place = await newPlace();
    const bot = await place.start();
    place.slack.failNext('chat.postMessage', { status: 503 }, { lost: 'answer' });
    expect(await deliver(bot.port ?? 0, order)).toBe(200);
    const more = message('make it 14', { ts: '1800001001.000100', thread_ts: thread });
    expect(await deliver(bot.port ?? 0, more)).toBe(200);
    await until(() => place.answers(thread).length === 2, 'both answers');
    expect(place.answers(thread)[0]).toMatch(/^12 corsages/);
    expect(place.answers(thread)[1]).toContain('14');
    expect(logOf(bot).filter(({ what, outcome }) => what === 'reply' && outcome === 'postponed').length).toBeGreaterThanOrEqual(2);
    expect(await bot.stop()).toBe(0);
    expect(place.answers(thread)).toHaveLength(2);
  });

  it('a token taken back keeps the reply until there is a new one', async () => {
    const place = await newPlace();
    const bot = await place.start();
    place.slack.failNext('chat.postMessage', { error: 'token_revoked' });
    expect(await deliver(bot.port ?? 0, order)).toBe(200);
    await until(
      () => logOf(bot).some(({ reason, outcome }) => reason === 'token_revoked' && outcome === 'postponed'),
      'the line about the token',
    );
    await bot.kill();
    await place.start();
    await until(() => place.answers(thread).length === 1, 'the answer with the new token');
  });

  it('what was said while it was away is answered, and new deliveries are acknowledged meanwhile', {
    timeout: 120_000 + Number(process.env['BENCHBELL_QUEUED'] ?? 300) * 100,
  }, async () => {
    const queued = Number(process.env['BENCHBELL_QUEUED'] ?? 300);
    const place = await newPlace();
    const away = openStore({ path: place.store, powerSafe: false });
    for (let n = 0; n < queued; n += 1) {
      const ts = `17${String(n).padStart(8, '0')}.000100`;
      const key = { workspace: 'T1', channel: `C${n % 200}`, thread: ts };
      const rest = { id: ts, revision: ts, author: 'UAILSA', kind: 'new', addressed: true, shared: false, sentAt: 0 } as const;
      away.receive({ ...key, ...rest, text: `${1 + (n % 90)} corsages at 30 inc` }, ts);
    }
    away.close();
    const bot = await place.start();
    const slowest = { acknowledged: 0 };
    const handled = (): number => logOf(bot).filter(({ what }) => what === 'message').length;
    let acknowledged = 0;
    for (let n = 0; handled() < queued; n += 1) {
      const asked = performance.now();
      expect(
        await deliver(
          bot.port ?? 0,
          message('lovely weather', { ts: `18${String(n).padStart(8, '0')}.000100`, thread_ts: '1700000000.000100', channel: 'C0' }),
        ),
      ).toBe(200);
      if (handled() < queued) acknowledged += 1;
      slowest.acknowledged = Math.max(slowest.acknowledged, performance.now() - asked);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    const posts = place.slack.messages.length;
    expect(acknowledged).toBeGreaterThan(0); // nor did the deliveries
    inGoodTime(slowest.acknowledged, 3_000);
    expect(posts).toBeGreaterThan(0); // posting did not wait for the end of the queue
    const seconds = Math.ceil(queued / 200) + 30;
    await until(() => new Set(place.slack.messages.map((one) => one.thread_ts)).size === queued, 'every answer', 60_000 + seconds * 4_000);
    expect(place.slack.messages).toHaveLength(queued);
    expect(await bot.stop()).toBe(0);
  });
});
