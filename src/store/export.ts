// Everything kept of one thread or one workspace, as plain JSON anyone can read without this program.

import type { Database } from 'better-sqlite3';
import type { IncomingMessage, StoredThread, ThreadKey } from '../assistant/ports.ts';
import type { StudioState } from '../studio/studio.ts';
import type { Entry } from '../thread/entry.ts';
import type { OpenStore } from './sqlite-store.ts';

export interface ExportedThread extends StoredThread {
  readonly entries: readonly Entry[];
  readonly waiting: readonly IncomingMessage[]; // received and not yet handled
}

export interface ExportedWorkspace {
  readonly format: 1;
  readonly workspace: string;
  readonly studio: StudioState | null; // null before anyone wrote to the bot
  readonly studioEntries: readonly Entry[];
  readonly threads: readonly ExportedThread[]; // oldest first
  readonly reminders: readonly { readonly channel: string; readonly kind: string; readonly day: string }[];
}

/** The workspaces that hold anything. */
export const workspaces = (db: Database): readonly string[] =>
  db
    .prepare<[], { workspace: string }>(
      'SELECT workspace FROM studios UNION SELECT workspace FROM threads UNION SELECT workspace FROM inbox ORDER BY workspace',
    )
    .all()
    .map((row) => row.workspace);

const threadWith = (store: OpenStore, key: ThreadKey, waiting: readonly IncomingMessage[]): ExportedThread => ({
  ...store.thread(key),
  entries: store.entries(key),
  waiting: waiting.filter(
    ({ workspace, channel, thread }) => workspace === key.workspace && channel === key.channel && thread === key.thread,
  ),
});

export const exportThread = (store: OpenStore, key: ThreadKey): ExportedThread => threadWith(store, key, store.waiting());

export const exportWorkspace = (store: OpenStore, workspace: string): ExportedWorkspace => {
  const { database } = store;
  const waiting = store.waiting().filter((message) => message.workspace === workspace);
  const keys = database
    .prepare<[{ workspace: string }], ThreadKey>(
      `SELECT workspace, channel, thread FROM (
         SELECT workspace, channel, thread, 0 AS late, seq FROM threads WHERE workspace = :workspace
         UNION ALL
         SELECT workspace, channel, thread, 1, min(seq) FROM inbox WHERE workspace = :workspace AND handled = 0 GROUP BY channel, thread
       ) GROUP BY channel, thread ORDER BY min(late), min(seq)`,
    )
    .all({ workspace });
  const said = database.prepare<[string], { channel: string; kind: string; day: string }>(
    'SELECT channel, kind, day FROM reminders WHERE workspace = ? ORDER BY day, channel, kind',
  );
  return {
    format: 1,
    workspace,
    studio: store.storedStudio(workspace)?.state ?? null,
    studioEntries: store.studioEntries(workspace),
    threads: keys.map((key) => threadWith(store, key, waiting)),
    reminders: said.all(workspace),
  };
};
