// What the store says when the disk or another program is in the way: a code for the bot, a sentence for whoever runs it.

import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { appendFileSync, chmodSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../src/store/open-database.ts';
import { buttonholes, key, message, outcome, tell } from './builders.ts';
import { newFolder, newPath, open } from './in-folder.ts';

const trouble = (code: string) => expect.objectContaining({ name: 'StoreTrouble', code });
const now = Date.UTC(2027, 0, 20);
const child = (...args: readonly string[]) => ['--import', 'tsx', new URL('../support/store-child.ts', import.meta.url).pathname, ...args];

describe('the database file', () => {
  it('can be read by its owner alone, with its log files, even if it was not so before', () => {
    const path = newPath();
    writeFileSync(path, '');
    chmodSync(path, 0o644);
    tell(open(path), message('m1'), [buttonholes(40)]);
    const modes = readdirSync(dirname(path)).map((name) => statSync(join(dirname(path), name)).mode & 0o777);
    expect(modes).toEqual([0o600, 0o600, 0o600]);
  });

  it('keeps every commit on the disk before it counts', () => {
    const db = openDatabase({ path: newPath() });
    expect([db.pragma('journal_mode', { simple: true }), db.pragma('synchronous', { simple: true })]).toEqual(['wal', 2]);
    db.close();
  });
});

describe('a database that cannot be used', () => {
  it('in a folder that is not there', () => {
    expect(() => open('/nowhere/at/all/loft.db')).toThrow(trouble('database-missing'));
  });

  it('that is a folder', () => {
    expect(() => open(newFolder())).toThrow(trouble('database-missing'));
  });

  it('that is no database', () => {
    const path = newPath();
    writeFileSync(path, 'a letter to a client, '.repeat(300));
    expect(() => open(path)).toThrow(trouble('database-corrupt'));
    expect(readFileSync(path, 'utf8')).toContain('a letter to a client');
  });

  it("that is another program's", () => {
    const path = newPath();
    const other = new Database(path);
    other.exec('CREATE TABLE accounts (a)');
    other.close();
    expect(() => open(path)).toThrow(trouble('database-not-ours'));
  });

  it('whose pages were overwritten', () => {
    const path = newPath();
    const store = open(path);
    for (let n = 0; n < 50; n += 1) tell(store, message(`m${n}`), [buttonholes(n + 1)]);
    store.close();
    const bytes = readFileSync(path);
    writeFileSync(path, bytes.fill(0xa5, 4096));
    expect(() => open(path)).toThrow(trouble('database-corrupt'));
  });

  it('with a torn log file still opens, without what was torn off', () => {
    const path = newPath();
    const store = open(path);
    tell(store, message('m1'), [buttonholes(40)]);
    const copied = newPath();
    writeFileSync(copied, readFileSync(path));
    writeFileSync(`${copied}-wal`, readFileSync(`${path}-wal`).subarray(0, -1000));
    appendFileSync(`${copied}-wal`, Buffer.alloc(500, 0xa5));
    const opened = new Database(copied);
    expect(opened.pragma('integrity_check', { simple: true })).toBe('ok');
    opened.close();
  });

  it('that this user may read but not write', () => {
    const path = newPath();
    const store = open(path);
    tell(store, message('m1'), [buttonholes(40)]);
    store.close();
    chmodSync(dirname(path), 0o755);
    chmodSync(path, 0o444);
    // A child gives up its rights first, because the owner of a machine may write anything.
    const said = execFileSync(process.execPath, child('open-as-nobody', path), { encoding: 'utf8' });
    expect(JSON.parse(said)).toEqual({ code: 'database-read-only', sentence: expect.stringContaining('cannot be written') });
  });

  it('locked by another program for longer than we wait', () => {
    const path = newPath();
    open(path).close();
    const other = new Database(path);
    other.exec('BEGIN IMMEDIATE');
    expect(() => open(path, { busyMilliseconds: 50 })).toThrow(trouble('database-locked'));
    other.close();
  });

  it('but waits for a program that holds it for two seconds', async () => {
    const path = newPath();
    const store = open(path, { busyMilliseconds: 60_000 });
    const holder = spawn(process.execPath, child('lock', path, '2000'), { stdio: ['ignore', 'pipe', 'inherit'] });
    await once(holder.stdout, 'data');
    expect(store.receive(message('m1'), 'd1')).toBe('new');
    const taken = Date.now();
    const [letGo] = (await once(holder.stdout, 'data')) as [Buffer];
    expect(taken).toBeGreaterThanOrEqual(Number(letGo.toString()));
  });
});

describe('a full disk', () => {
  it('refuses the message whole, and takes it once there is room', () => {
    const store = open(newPath());
    const about = message('m1', { text: 'x'.repeat(40_000) });
    const pages = Number(store.database.pragma('page_count', { simple: true }));
    store.database.pragma(`max_page_count = ${pages}`);
    expect(() => store.receive(about, 'd1')).toThrow(trouble('disk-full'));
    expect(store.waiting()).toEqual([]);
    store.database.pragma(`max_page_count = ${pages + 1000}`);
    expect(store.receive(about, 'd1')).toBe('new');

    store.database.pragma(`max_page_count = ${Number(store.database.pragma('page_count', { simple: true }))}`);
    const long = Array.from({ length: 500 }, () => buttonholes(40));
    expect(() => store.commit(outcome(store, about, long))).toThrow(trouble('disk-full'));
    expect(store.waiting()).toHaveLength(1);
    expect(store.thread(key()).version).toBe(0);
    expect(store.unsent(now)).toEqual([]);
    store.database.pragma(`max_page_count = ${pages + 1000}`);
    expect(store.commit(outcome(store, about, long))).toBe('stored');
  });
});

it('an entry that cannot be read is named by its number, without its words', () => {
  const store = open(':memory:');
  tell(store, message('m1'), [buttonholes(40)]);
  store.database.exec('DROP TRIGGER entries_are_append_only; UPDATE entries SET facts = \'[{"fact":"Catriona"}]\'');
  const read = () => store.entries(key());
  expect(read).toThrow(trouble('entry-unreadable'));
  expect(read).toThrow('Entry 1 of the database');
  expect(read).not.toThrow('Catriona');
});
