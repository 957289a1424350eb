// Really deletes one thread: its messages, entries, state and replies, overwritten on the disk and in the log file.
// Prices and crew said in it belong to the studio and stay, without who said them and where. Backups made before still hold the thread.

import type { ThreadKey } from '../assistant/ports.ts';
import type { OpenStore } from './sqlite-store.ts';

export interface Forgotten {
  readonly entries: number;
  readonly keptForStudio: number;
  readonly messages: number;
  readonly replies: number; // waiting ones too: they will not be posted
}

export const forget = (store: OpenStore, { workspace, channel, thread }: ThreadKey): Forgotten => {
  const where = 'WHERE workspace = ? AND channel = ? AND thread = ?';
  const forgotten = store.write(() => {
    const run = (sql: string): number => store.database.prepare(`${sql} ${where}`).run(workspace, channel, thread).changes;
    const kept = store.database
      .prepare(`UPDATE entries SET channel = NULL, thread = NULL, author = '' ${where} AND scope = 'studio'`)
      .run(workspace, channel, thread).changes;
    return {
      keptForStudio: kept,
      entries: run('DELETE FROM entries'),
      messages: run('DELETE FROM inbox'),
      replies: run('DELETE FROM outbox'),
      threads: run('DELETE FROM threads'),
    };
  });
  store.database.pragma('wal_checkpoint(TRUNCATE)'); // until then the log file still holds the old pages
  const { threads: _, ...counts } = forgotten;
  return counts;
};
