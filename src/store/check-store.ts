// Proves the database: its pages and indexes, its references, every entry readable and in its place, every snapshot equal to the fold of its log.

import { isDeepStrictEqual } from 'node:util';
import type { Database } from 'better-sqlite3';
import type { StudioSettings } from '../studio/settings.ts';
import type { Folds } from './folds.ts';
import { StoreTrouble } from './store-trouble.ts';
import { type EntryRow, entryColumns, studioEntryColumns, toEntry } from './stored-entry.ts';

export interface StoreReport {
  readonly threads: number;
  readonly entries: number;
  readonly waitingMessages: number;
  readonly waitingReplies: number;
  readonly faults: readonly string[]; // sentences with ids, never a word of a message
}

interface ThreadRow {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
  readonly version: number;
  readonly state: string;
}

interface StudioRow {
  readonly workspace: string;
  readonly settings: string;
  readonly state: string;
}

export const checkStore = (db: Database, folds: Folds): StoreReport => {
  const count = (sql: string): number => db.prepare<[], { n: number }>(`SELECT count(*) AS n FROM ${sql}`).get()?.n ?? 0;
  const faults = [...pageFaults(db), ...threadFaults(db, folds), ...studioFaults(db, folds), ...strayFaults(count)];
  return {
    threads: count('threads'),
    entries: count('entries'),
    waitingMessages: count('inbox WHERE handled = 0'),
    waitingReplies: count('outbox WHERE ended_at IS NULL'),
    faults,
  };
};

const pageFaults = (db: Database): readonly string[] => {
  const pages = db.pragma('integrity_check') as readonly { readonly integrity_check: string }[];
  const references = db.pragma('foreign_key_check') as readonly { readonly table: string; readonly rowid: number }[];
  return [
    ...pages.map((row) => row.integrity_check).filter((line) => line !== 'ok'),
    ...references.map((row) => `row ${row.rowid} of ${row.table} refers to a thread that is not there`),
  ];
};

/** One thread at a time, so that a large store needs no more memory than its longest thread. */
const threadFaults = function* (db: Database, folds: Folds): Generator<string> {
  const rows = db.prepare<[], ThreadRow>('SELECT workspace, channel, thread, version, state FROM threads ORDER BY seq').all();
  const log = db.prepare<string[], EntryRow & { readonly position: number }>(
    `SELECT position, ${entryColumns} FROM entries WHERE workspace = ? AND channel = ? AND thread = ? ORDER BY position`,
  );
  for (const { workspace, channel, thread, version, state } of rows) {
    const name = `thread ${workspace}/${channel}/${thread}`;
    const entries = log.all(workspace, channel, thread);
    if (entries.length !== version || entries.some((row, index) => row.position !== index + 1)) yield `${name}: entries are missing`;
    yield* stateFault(name, state, () => folds.event(entries.map(toEntry)));
  }
};

const studioFaults = function* (db: Database, folds: Folds): Generator<string> {
  const rows = db.prepare<[], StudioRow>('SELECT workspace, settings, state FROM studios').all();
  const log = db.prepare<[string], EntryRow>(
    `SELECT ${studioEntryColumns} FROM entries WHERE workspace = ? AND scope = 'studio' ORDER BY seq`,
  );
  for (const { workspace, settings, state } of rows) {
    yield* stateFault(`studio ${workspace}`, state, () => {
      const { settings: _, ...rest } = folds.studio(JSON.parse(settings) as StudioSettings, log.all(workspace).map(toEntry));
      return rest;
    });
  }
};

const stateFault = function* (name: string, snapshot: string, fold: () => unknown): Generator<string> {
  try {
    if (!isDeepStrictEqual(JSON.parse(JSON.stringify(fold())), JSON.parse(snapshot)))
      yield `${name}: the snapshot is not what its log says`;
  } catch (error) {
    yield `${name}: ${error instanceof StoreTrouble ? error.message : 'its log cannot be folded'}`;
  }
};

const strayFaults = function* (count: (sql: string) => number): Generator<string> {
  const texts = count("inbox WHERE handled = 1 AND text <> ''");
  if (texts > 0) yield `${texts} handled messages still hold their text`;
  const replies = count("outbox WHERE ended_at IS NOT NULL AND reply <> ''");
  if (replies > 0) yield `${replies} ended replies still hold their words`;
  const broken = count('outbox WHERE ended_at IS NULL AND NOT json_valid(reply)');
  if (broken > 0) yield `${broken} waiting replies cannot be read`;
};
