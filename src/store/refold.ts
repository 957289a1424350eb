// Makes snapshots again that an older fold left behind, so that every state and every date in the index is what today's code would say.

import type { Database } from 'better-sqlite3';
import type { StudioSettings } from '../studio/settings.ts';
import type { Folds } from './folds.ts';
import { type EntryRow, entryColumns, studioEntryColumns, toEntry } from './stored-entry.ts';

interface StaleThread {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
}

/** Call it inside a transaction. Returns how many threads and studios were stale. */
export const refold = (db: Database, folds: Folds): number => {
  const stale = db.prepare<[number], StaleThread>('SELECT workspace, channel, thread FROM threads WHERE fold <> ?').all(folds.version);
  const entries = db.prepare<string[], EntryRow>(
    `SELECT ${entryColumns} FROM entries WHERE workspace = ? AND channel = ? AND thread = ? ORDER BY position`,
  );
  const put = db.prepare('UPDATE threads SET state = ?, fold = ? WHERE workspace = ? AND channel = ? AND thread = ?');
  for (const { workspace, channel, thread } of stale) {
    const state = folds.event(entries.all(workspace, channel, thread).map(toEntry));
    put.run(JSON.stringify(state), folds.version, workspace, channel, thread);
  }
  const staleStudios = db.prepare<[number], { workspace: string }>('SELECT workspace FROM studios WHERE fold <> ?').all(folds.version);
  for (const { workspace } of staleStudios) refoldStudio(db, folds, workspace);
  return stale.length + staleStudios.length;
};

/** Also needed when entries were taken out of the log. */
export const refoldStudio = (db: Database, folds: Folds, workspace: string): void => {
  const row = db.prepare<[string], { settings: string }>('SELECT settings FROM studios WHERE workspace = ?').get(workspace);
  if (!row) return;
  const entries = db
    .prepare<[string], EntryRow>(`SELECT ${studioEntryColumns} FROM entries WHERE workspace = ? AND scope = 'studio' ORDER BY seq`)
    .all(workspace)
    .map(toEntry);
  const { settings: _, ...state } = folds.studio(JSON.parse(row.settings) as StudioSettings, entries);
  db.prepare('UPDATE studios SET state = ?, fold = ? WHERE workspace = ?').run(JSON.stringify(state), folds.version, workspace);
};
