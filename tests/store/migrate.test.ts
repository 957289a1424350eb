// The schema this code makes is the one written down in schema.golden.sql, step by step and whole or not at all.

import { readFileSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { copyBeforeMigrating } from '../../src/store/backup.ts';
import { migrate, schemaNumber } from '../../src/store/migrate.ts';
import { migrations } from '../../src/store/migrations/in-order.ts';
import { buttonholes, key, message, tell } from './builders.ts';
import { newPath, open } from './in-folder.ts';

const now = Date.UTC(2027, 0, 20);
const schemaOf = (db: Database.Database): string =>
  db
    .prepare<[], { sql: string }>("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%' ORDER BY type, name")
    .all()
    .map((row) => `${row.sql};\n`)
    .join('\n');

/** The step after those there are. */
const next = migrations.length + 1;

describe('migrations', () => {
  it('make the schema of the golden file', async () => {
    await expect(schemaOf(open(':memory:').database)).toMatchFileSnapshot('schema.golden.sql');
  });

  it('are numbered 1, 2, 3 without gaps', () => {
    expect(migrations.map((step) => step.number)).toEqual(migrations.map((_, index) => index + 1));
  });

  it('begin every table with its workspace, but for the ledger and the lease', () => {
    const { database } = open(':memory:');
    const tables = database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'").pluck().all();
    const without = tables.filter((table) => {
      const columns = database.pragma(`table_info(${String(table)})`) as readonly { name: string; notnull: number }[];
      return !columns.some((column) => column.name === 'workspace' && column.notnull === 1);
    });
    expect(without.sort()).toEqual(['lease', 'migrations']);
  });

  it('change nothing the second time', () => {
    const db = new Database(':memory:');
    const options = { path: 'p', now, backUp: () => undefined };
    expect(migrate(db, options)).toEqual(migrations.map((step) => step.number));
    expect(migrate(db, options)).toEqual([]);
    db.close();
  });

  it('are applied whole or not at all', () => {
    const db = new Database(':memory:');
    const steps = [...migrations, { number: next, name: 'broken', sql: 'CREATE TABLE whole (a TEXT) STRICT; CREATE TABLE half (' }];
    const backups: number[] = [];
    const options = { path: 'p', now, steps, backUp: (before: number) => void backups.push(before) };
    migrate(db, { ...options, steps: migrations });
    expect(() => migrate(db, options)).toThrow();
    expect(schemaNumber(db)).toBe(migrations.length);
    expect(db.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'whole'").pluck().get()).toBe(0);
    expect(backups).toEqual([next]);
    db.close();
  });

  it('refuse a database of a newer version, and leave it as it is', () => {
    const path = newPath();
    const store = open(path);
    tell(store, message('m1'), [buttonholes(40)]);
    store.database.prepare("INSERT INTO migrations VALUES (99, 'of next year', 0)").run();
    store.close();
    const before = readFileSync(path);
    expect(() => open(path)).toThrow(expect.objectContaining({ code: 'database-newer', message: expect.stringContaining('schema 99') }));
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it('copy a database that holds something before they change it, for the owner only', () => {
    const path = newPath();
    const store = open(path);
    tell(store, message('m1'), [buttonholes(40)]);
    store.close();
    const db = new Database(path);
    const steps = [...migrations, { number: next, name: 'next', sql: 'ALTER TABLE reminders ADD COLUMN note TEXT' }];
    migrate(db, { path, now, steps, backUp: (before) => void copyBeforeMigrating(db, path, before) });
    db.close();
    expect(() => open(path)).toThrow(expect.objectContaining({ code: 'database-newer' }));
    const copy = `${path}.before-schema-${next}`;
    expect(statSync(copy).mode & 0o777).toBe(0o600);
    expect(open(copy).thread(key())).toMatchObject({ version: 1, state: { lines: [{ count: 40 }] } });
  });

  it('keep what waits and what was posted when the outbox is made again with summaries in it', () => {
    const db = new Database(':memory:');
    const options = { path: 'p', now, backUp: () => undefined };
    migrate(db, { ...options, steps: migrations.slice(0, 1) });
    const put = db.prepare(`INSERT INTO outbox (id, workspace, channel, thread, purpose, about, slot, reply, state, ended_at, host_id)
      VALUES (?, 'W', 'C', 't', 'answer', 'm1', 0, '{}', ?, ?, ?)`);
    put.run('a1', 'posted', 5, 'ts 1');
    put.run('a2', 'waiting', null, null);
    migrate(db, options);
    expect(db.prepare('SELECT id, state, host_id FROM outbox ORDER BY seq').raw().all()).toEqual([
      ['a1', 'posted', 'ts 1'],
      ['a2', 'waiting', null],
    ]);
    expect(
      db.prepare("SELECT count(*) FROM sqlite_schema WHERE tbl_name = 'outbox' AND type = 'index' AND sql IS NOT NULL").pluck().get(),
    ).toBe(2);
    db.close();
  });

  it('make old snapshots again when the fold has changed, dates included', () => {
    const path = newPath();
    const first = open(path);
    tell(first, message('m1'), [buttonholes(40)]);
    first.close();
    const event = () => ({ ...open(':memory:').thread(key()).state, date: '2027-03-14' as never });
    const later = open(path, { folds: { ...first.folds, version: first.folds.version + 1, event } });
    expect(later.thread(key())).toMatchObject({ version: 1, state: { date: '2027-03-14' } });
    expect(later.openEvents(key().workspace, '2027-03-14' as never)).toHaveLength(1);
  });
});
