// Damage, another program or another bot in the way of the whole program: one clear line in the log, an exit code that says what happened, and
// nothing lost.

import { readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { logOf, newPlace, refusedStart, sendUntilTaken } from '../support/a-bot.ts';
import { deliver, until } from '../support/bot-process.ts';
import { mention } from '../support/slack-deliveries.ts';
import { aUsedStore, waitingThreads } from '../support/used-store.ts';

const order = (ts: string, channel = 'C1') => mention('<@UBOT> 12 corsages at 30 inc', { ts, channel });

describe('at the start', { timeout: 180_000 }, () => {
  it('a folder that is not there is named', async () => {
    const place = await newPlace();
    expect(await refusedStart(place, { BENCHBELL_STORE: '/nowhere/at/all/studio.sqlite' })).toContain('Check that its folder exists');
  });

  it('a disk that cannot be written is named', async () => {
    const place = await newPlace();
    expect(await refusedStart(place, { BENCHBELL_STORE: '/sys/studio.sqlite' })).toContain('/sys/studio.sqlite cannot be written');
  });

  it('a damaged database is left as it is, and the backup spoken of', async () => {
    const place = await newPlace();
    aUsedStore(place.store);
    const bytes = readFileSync(place.store).fill(0xa5, 4096);
    writeFileSync(place.store, bytes);
    expect(await refusedStart(place)).toContain('is damaged. Stop the bot and restore the latest backup.');
    expect(readFileSync(place.store).equals(bytes)).toBe(true);
  });

  it('a database from a newer version is left alone', async () => {
    const place = await newPlace();
    aUsedStore(place.store);
    const db = new Database(place.store);
    db.exec("INSERT INTO migrations VALUES (9000, 'from the future', 0)");
    db.close();
    expect(await refusedStart(place)).toContain('was written by a newer version (schema 9000');
  });

  it('a database another program has locked is named', async () => {
    const place = await newPlace();
    aUsedStore(place.store);
    const other = new Database(place.store);
    other.exec('BEGIN EXCLUSIVE');
    expect(await refusedStart(place)).toContain('is locked by another program');
    other.close();
  });

  it('a second bot is told whose database it is, and takes over when the first has died', async () => {
    const place = await newPlace();
    const first = await place.start();
    expect(await refusedStart(place)).toContain(`is in use by process ${first.process.pid}`);
    expect(await deliver(first.port ?? 0, order('1800000400.000100'))).toBe(200);
    await first.kill();
    const second = await place.start();
    await until(() => place.answers('1800000400.000100').length === 1, 'the answer to what the first was told');
    expect(await second.stop()).toBe(0);
  });
});

describe('while it works', { timeout: 180_000 }, () => {
  it('a lock of another program is waited out before Slack is answered', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const other = new Database(place.store, { timeout: 60_000 });
    other.exec('BEGIN IMMEDIATE');
    const taken = sendUntilTaken(() => bot, order('1800000700.000100'));
    await until(() => logOf(bot).some(({ what }) => what === 'store'), 'the line about the lock');
    other.exec('COMMIT');
    other.close();
    await taken;
    await until(() => place.answers('1800000700.000100').length === 1, 'the answer afterwards');
    const said = logOf(bot).filter(({ what }) => what === 'store');
    expect(said.map(({ outcome }) => outcome)).toEqual(['waiting', 'works again']);
    expect(await bot.stop()).toBe(0);
  });

  it('a bot whose database was taken over ends, and says why', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const other = new Database(place.store, { timeout: 60_000 });
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

  it('damage found on the way ends it, and the next start speaks of the backup', async () => {
    const place = await newPlace();
    const bot = await place.start();
    const ended = new Promise((resolve) => bot.process.once('exit', resolve));
    const other = new Database(place.store, { timeout: 60_000 });
    other.unsafeMode(true);
    other.exec(
      "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = 'CREATE TABL' WHERE name = 'inbox'; PRAGMA schema_version = 9000",
    );
    other.close();
    await deliver(bot.port ?? 0, order('1800000900.000100'));
    expect(await ended).toBe(1);
    expect(logOf(bot).find(({ what }) => what === 'store')).toMatchObject({
      outcome: 'ended',
      reason: 'database-corrupt',
      msg: expect.stringContaining('restore the latest backup'),
    });
    expect(await refusedStart(place)).toContain('restore the latest backup');
  });

  it('a clock set back by a year holds nothing up', async () => {
    const place = await newPlace();
    aUsedStore(place.store);
    // As a run whose clock was a year ahead leaves it: the hold of another machine.
    const ahead = Date.now() + 365 * 86_400_000;
    const db = new Database(place.store);
    db.prepare("INSERT INTO lease VALUES (1, 'gone', 'another machine', 1, '', ?, ?)").run(ahead, ahead + 60_000);
    db.close();
    const bot = await place.start();
    await until(() => waitingThreads.every((ts) => place.answers(ts).length === 1), 'the answers');
    expect(await bot.stop()).toBe(0);
  });
});
