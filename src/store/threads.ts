// Event threads: their entries, and the snapshot kept beside them so that one more message never reads the whole log.

import type { Database } from 'better-sqlite3';
import type { OpenEvent, StoredThread, ThreadKey } from '../assistant/ports.ts';
import type { Entry } from '../thread/entry.ts';
import { type EventState, newEvent } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { recent } from './recent.ts';
import { type EntryRow, entryColumns, entryFormat, toColumns, toEntry } from './stored-entry.ts';

interface ThreadRow {
  readonly version: number;
  readonly state: string;
}

/** A thread's number and version. */
type OpenRow = readonly [seq: number, version: number];

interface WholeRow {
  readonly channel: string;
  readonly thread: string;
  readonly state: string;
}

/** A snapshot as it was last read, so that the other open events are not parsed again for every message. */
interface Read {
  readonly version: number;
  readonly event: OpenEvent;
}

export const threads = (db: Database, fold: number) => {
  const find = db.prepare<string[], ThreadRow>('SELECT version, state FROM threads WHERE workspace = ? AND channel = ? AND thread = ?');
  const findEntries = db.prepare<string[], EntryRow>(
    `SELECT ${entryColumns} FROM entries WHERE workspace = ? AND channel = ? AND thread = ? ORDER BY position`,
  );
  const put = db.prepare(`
    INSERT INTO threads (workspace, channel, thread, version, state, fold) VALUES (?, ?, ?, ?, ?, ?)
    ON CONFLICT (workspace, channel, thread) DO UPDATE SET version = excluded.version, state = excluded.state, fold = excluded.fold`);
  const append = db.prepare(`
    INSERT INTO entries (workspace, channel, thread, position, scope, message, revision, kind, author, at, format, facts, open)
    VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`);
  // Two halves, because one condition with OR would not use the index for the order.
  const dated = db.prepare<[string, string], OpenRow>(
    'SELECT seq, version FROM threads WHERE workspace = ? AND cancelled = 0 AND event_date >= ? ORDER BY event_date, seq',
  );
  const undated = db.prepare<[string], OpenRow>(
    'SELECT seq, version FROM threads WHERE workspace = ? AND cancelled = 0 AND event_date IS NULL ORDER BY seq',
  );
  const whole = db.prepare<[number], WholeRow>('SELECT channel, thread, state FROM threads WHERE seq = ?');
  const known = recent<ReadonlyMap<number, Read>>();
  const openEvent = (workspace: string, seq: number): OpenEvent => {
    const { channel, thread, state } = whole.get(seq) as WholeRow;
    return { key: { workspace, channel, thread }, state: JSON.parse(state) as EventState };
  };
  const versionOf = ({ workspace, channel, thread }: ThreadKey): number => find.get(workspace, channel, thread)?.version ?? 0;

  return {
    versionOf,

    thread: (key: ThreadKey): StoredThread => {
      const row = find.get(key.workspace, key.channel, key.thread);
      return row ? { key, version: row.version, state: JSON.parse(row.state) as EventState } : { key, version: 0, state: newEvent };
    },

    entries: ({ workspace, channel, thread }: ThreadKey): readonly Entry[] => findEntries.all(workspace, channel, thread).map(toEntry),

    /** Adds the entries and keeps the state they lead to. Without entries the state cannot have changed, and nothing is written. */
    extend: ({ workspace, channel, thread }: ThreadKey, entries: readonly Entry[], state: EventState): void => {
      if (entries.length === 0) return;
      let position = versionOf({ workspace, channel, thread });
      put.run(workspace, channel, thread, position + entries.length, JSON.stringify(state), fold);
      for (const entry of entries) {
        position += 1;
        const { facts, open } = toColumns(entry);
        const { scope, message, revision, kind, author } = entry;
        const at = Math.trunc(entry.at);
        append.run(workspace, channel, thread, position, scope, message, revision, kind, author, at, entryFormat, facts, open);
      }
    },

    openEvents: (workspace: string, from: Day): readonly OpenEvent[] => {
      const before = known.get(workspace);
      const now = new Map<number, Read>();
      for (const [seq, version] of [...dated.raw().all(workspace, from), ...undated.raw().all(workspace)]) {
        const read = before?.get(seq);
        now.set(seq, read?.version === version ? read : { version, event: openEvent(workspace, seq) });
      }
      known.set(workspace, now);
      return Array.from(now.values(), ({ event }) => event);
    },

    /** A thread that is deleted and begun again may come back with its old number and version. */
    forgetRead: (): void => known.clear(),
  };
};
