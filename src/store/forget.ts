// Really deletes one thread: its messages, entries, state and replies, overwritten on the disk and in the log file.
// Prices and crew said in it belong to the studio and stay, without who said them and where. Backups made before still hold the thread.

import type { Database } from 'better-sqlite3';
import type { ThreadKey } from '../assistant/ports.ts';

export interface Forgotten {
  readonly entries: number;
  readonly keptForStudio: number;
  readonly messages: number;
  readonly replies: number; // waiting ones too: they will not be posted
}

interface WritableStore {
  readonly database: Database;
  write<T>(work: () => T): T;
}

export const forget = (store: WritableStore, key: ThreadKey): Forgotten => {
  const forgotten = store.write(() => deleteThread(store.database, key));
  overwriteLog(store.database);
  return forgotten;
};

/** Inside a transaction of the caller's. */
export const deleteThread = (db: Database, { workspace, channel, thread }: ThreadKey): Forgotten => {
  const where = 'WHERE workspace = ? AND channel = ? AND thread = ?';
  const run = (sql: string): number => db.prepare(`${sql} ${where}`).run(workspace, channel, thread).changes;
  const kept = db
    .prepare(`UPDATE entries SET channel = NULL, thread = NULL, author = '' ${where} AND scope = 'studio'`)
    .run(workspace, channel, thread).changes;
  const counts = {
    keptForStudio: kept,
    entries: run('DELETE FROM entries'),
    messages: run('DELETE FROM inbox'),
    replies: run('DELETE FROM outbox'),
  };
  run('DELETE FROM threads');
  return counts;
};

/** Until then the log file still holds the old pages. */
export const overwriteLog = (db: Database): void => void db.pragma('wal_checkpoint(TRUNCATE)');
