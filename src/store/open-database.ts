// Opens the database file with the settings that keep it whole: write-ahead log, every commit on the disk before it counts, foreign keys,
// deleted content overwritten, and no one else on the machine able to read it.

import { chmodSync, closeSync, openSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import { named, StoreTrouble } from './store-trouble.ts';

export type { Database } from 'better-sqlite3';

/** Marks the file as ours: the letters "BnBl". SQLite keeps it in the file's header. */
export const applicationId = 0x42_6e_42_6c;

const inMemory = (path: string): boolean => path === ':memory:' || path === '';

export interface OpenDatabaseOptions {
  readonly path: string; // ':memory:' keeps nothing
  readonly busyMilliseconds?: number; // how long to wait for another program's lock; 5,000 when left out
  /** false: a power cut may lose the last commits (a killed process never does). For tests. */
  readonly powerSafe?: boolean;
}

/** Throws StoreTrouble: locked, corrupt, read-only, missing, or another program's database. */
export const openDatabase = ({ path, busyMilliseconds = 5000, powerSafe = true }: OpenDatabaseOptions): Database.Database =>
  named(path, () => {
    if (!inMemory(path)) ownerOnly(path);
    const db = new Database(path, { timeout: busyMilliseconds });
    try {
      const isNew = isEmptyOrOurs(db, path) === 'empty';
      db.pragma('journal_mode = WAL');
      // FULL, not NORMAL: in WAL mode NORMAL may lose commits at a power cut, and Slack never sends an acknowledged delivery again.
      db.pragma(`synchronous = ${powerSafe ? 'FULL' : 'OFF'}`);
      db.pragma('cache_size = -4000'); // KiB: the system keeps the file in memory too, and gives it back when others need it
      db.pragma('foreign_keys = ON');
      db.pragma('secure_delete = ON');
      db.pragma('trusted_schema = OFF');
      if (isNew) db.pragma(`application_id = ${applicationId}`);
      return db;
    } catch (error) {
      db.close();
      throw error;
    }
  });

/** SQLite gives its log files the rights of the database, so these are set before it opens. */
const ownerOnly = (path: string): void => {
  closeSync(openSync(path, 'a', 0o600));
  if ((statSync(path).mode & 0o077) !== 0) chmodSync(path, 0o600);
};

const isEmptyOrOurs = (db: Database.Database, path: string): 'empty' | 'ours' => {
  const id = db.pragma('application_id', { simple: true });
  if (id === applicationId) return 'ours';
  const tables = db.prepare<[], { tables: number }>('SELECT count(*) AS tables FROM sqlite_schema').get()?.tables ?? 0;
  if (id === 0 && tables === 0) return 'empty';
  throw new StoreTrouble('database-not-ours', `${path} is a database of another program. Choose another path.`);
};
