// The disk, another program or another bot in the way of the whole program: one clear line in the log, an exit code that says what happened,
// nothing lost, and a word to whoever had to wait.

import { execFileSync } from 'node:child_process';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../src/store/sqlite-store.ts';
import { logOf, newPlace, type Place, sendUntilTaken } from '../support/a-bot.ts';
import { deliver, until } from '../support/bot-process.ts';
import { mention } from '../support/slack-deliveries.ts';

const order = (ts: string, channel = 'C1') => mention('<@UBOT> 12 corsages at 30 inc', { ts, channel });
const threads = (count: number) => Array.from({ length: count }, (_, n) => `18000003${String(n).padStart(2, '0')}.000100`);

const refused = async (place: Place, env: Readonly<Record<string, string>> = {}): Promise<string> => {
  const said = await place.start(env).then(
    () => 'it started',
    (error: unknown) => (error instanceof Error ? error.message : ''),
  );
  expect(said).toMatch(/^the bot ended with 2: /);
  expect(said).not.toMatch(/ {4}at |node_modules/);
  return said;
};

/** As a run before leaves it: three messages received, and not yet answered. */
const aUsedStore = (place: Place): void => {
  const earlier = openStore({ path: place.store });
  for (const ts of threads(3)) {
    const said = { author: 'UAILSA', kind: 'new', text: '12 corsages at 30 inc', addressed: true, shared: false, sentAt: 0 } as const;
    earlier.receive({ workspace: 'T1', channel: `C${ts}`, thread: ts, id: ts, revision: ts, ...said }, ts);
  }
  earlier.close();
};

describe('at the start', { timeout: 30_000 }, () => {
  it('a folder that is not there is named', async () => {
    const place = await newPlace();
    expect(await refused(place, { BENCHBELL_STORE: '/nowhere/at/all/studio.sqlite' })).toContain('Check that its folder exists');
  });

  it('a disk that cannot be written is named', async () => {
    const place = await newPlace();
    expect(await refused(place, { BENCHBELL_STORE: '/sys/studio.sqlite' })).toContain('/sys/studio.sqlite cannot be written');
  });

  it('a damaged database is left as it is, and the backup spoken of', async () => {
    const place = await newPlace();
    aUsedStore(place);
    const bytes = readFileSync(place.store).fill(0xa5, 4096);
    writeFileSync(place.store, bytes);
    expect(await refused(place)).toContain('is damaged. Stop the bot and restore the latest backup.');
    expect(readFileSync(place.store).equals(bytes)).toBe(true);
  });

  it('a database from a newer version is left alone', async () => {
    const place = await newPlace();
    aUsedStore(place);
    const db = new Database(place.store);
    db.exec("INSERT INTO migrations VALUES (9000, 'from the future', 0)");
    db.close();
    expect(await refused(place)).toContain('was written by a newer version (schema 9000');
  });

  it('a database another program has locked is named', async () => {
    const place = await newPlace();
    aUsedStore(place);
    const other = new Database(place.store);
    other.exec('BEGIN EXCLUSIVE');
    expect(await refused(place)).toContain('is locked by another program');
    other.close();
  });

  it('a second bot is told whose database it is, and takes over when the first has died', async () => {
    const place = await newPlace();
    const first = await place.start();
    expect(await refused(place)).toContain(`is in use by process ${first.process.pid}`);
    expect(await deliver(first.port ?? 0, order('1800000400.000100'))).toBe(200);
    await first.kill();
    const second = await place.start();
    await until(() => place.answers('1800000400.000100').length === 1, 'the answer to what the first was told');
    expect(await second.stop()).toBe(0);
  });
});

describe('while it works', { timeout: 60_000 }, () => {
  it('a full disk loses nothing, says so once, and those who waited are told', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const limit = (bytes: string) => execFileSync('prlimit', [`--pid=${bot.process.pid}`, `--fsize=${bytes}:unlimited`]);
    expect(await deliver(bot.port ?? 0, order('1800000500.000100'))).toBe(200);
    await until(() => place.answers('1800000500.000100').length === 1, 'an answer before');
    limit(String(statSync(`${place.store}-wal`).size));
    const waiting = Array.from({ length: 3 }, (_, n) => `180000060${n}.000100`);
    const sending = waiting.map((ts, n) => sendUntilTaken(() => bot, order(ts, `C${n}`)));
    await until(() => logOf(bot).some(({ what }) => what === 'store'), 'the line about the disk');
    await new Promise((resolve) => setTimeout(resolve, 1_500));
    expect(place.slack.messages).toHaveLength(1);
    limit('unlimited');
    await Promise.all(sending);
    await until(() => waiting.every((ts) => place.answers(ts).length === 1), 'the answers afterwards');
    const said = logOf(bot).filter(({ what }) => what === 'store');
    expect(said.map(({ outcome }) => outcome)).toEqual(['waiting', 'works again']);
    expect(said[0]?.['msg']).toContain('Nothing was stored');
    expect(await bot.stop()).toBe(0);
  });

  it('a lock of another program is waited out before Slack is answered', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const other = new Database(place.store, { timeout: 5_000 });
    other.exec('BEGIN IMMEDIATE');
    const taken = deliver(bot.port ?? 0, order('1800000700.000100'));
    await new Promise((resolve) => setTimeout(resolve, 1_200));
    other.exec('COMMIT');
    other.close();
    expect(await taken).toBe(200);
    await until(() => place.answers('1800000700.000100').length === 1, 'the answer afterwards');
    const said = logOf(bot).filter(({ what }) => what === 'store');
    expect(said.map(({ outcome }) => outcome)).toEqual(['waiting', 'works again']);
    expect(await bot.stop()).toBe(0);
  });

  it('a bot whose database was taken over ends, and says why', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const other = new Database(place.store, { timeout: 5_000 });
    other.exec("UPDATE lease SET holder = 'another bot'");
    other.close();
    const ended = new Promise((resolve) => bot.process.once('exit', resolve));
    await deliver(bot.port ?? 0, order('1800000800.000100'));
    expect(await ended).toBe(1);
    expect(logOf(bot).find(({ what }) => what === 'store')).toMatchObject({
      reason: 'lease-lost',
      msg: expect.stringContaining('Stop this one'),
    });
    await (await place.start()).stop();
  });

  it('a clock set back by a year holds nothing up', async () => {
    const place = await newPlace();
    aUsedStore(place);
    // As a run whose clock was a year ahead leaves it: the hold of another machine.
    const ahead = Date.now() + 365 * 86_400_000;
    const db = new Database(place.store);
    db.prepare("INSERT INTO lease VALUES (1, 'gone', 'another machine', 1, '', ?, ?)").run(ahead, ahead + 60_000);
    db.close();
    const bot = await place.start();
    await until(() => threads(3).every((ts) => place.answers(ts).length === 1), 'the answers');
    expect(await bot.stop()).toBe(0);
  });
});
