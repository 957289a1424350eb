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
    expect(migrate(db, options)).toEqual([1]);
    expect(migrate(db, options)).toEqual([]);
    db.close();
  });

  it('are applied whole or not at all', () => {
    const db = new Database(':memory:');
    const steps = [...migrations, { number: 2, name: 'broken', sql: 'CREATE TABLE whole (a TEXT) STRICT; CREATE TABLE half (' }];
    const backups: number[] = [];
    const options = { path: 'p', now, steps, backUp: (next: number) => void backups.push(next) };
    migrate(db, { ...options, steps: migrations });
    expect(() => migrate(db, options)).toThrow();
    expect(schemaNumber(db)).toBe(1);
    expect(db.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'whole'").pluck().get()).toBe(0);
    expect(backups).toEqual([2]);
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
    const steps = [...migrations, { number: 2, name: 'next', sql: 'ALTER TABLE reminders ADD COLUMN note TEXT' }];
    migrate(db, { path, now, steps, backUp: (next) => void copyBeforeMigrating(db, path, next) });
    db.close();
    expect(() => open(path)).toThrow(expect.objectContaining({ code: 'database-newer' }));
    const copy = `${path}.before-schema-2`;
    expect(statSync(copy).mode & 0o777).toBe(0o600);
    expect(open(copy).thread(key())).toMatchObject({ version: 1, state: { lines: [{ count: 40 }] } });
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
