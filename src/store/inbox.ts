// What came in. A delivery is kept before it is acknowledged, because an acknowledged one is never sent again.

import type { Database } from 'better-sqlite3';
import type { FileContent, FileToFetch, IncomingMessage, ThreadKey } from '../assistant/ports.ts';

interface Row {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
  readonly message: string;
  readonly revision: string;
  readonly author: string;
  readonly kind: IncomingMessage['kind'];
  readonly text: string;
  readonly tap_action: string | null;
  readonly tap_value: string | null;
  readonly addressed: number;
  readonly shared: number;
  readonly guest: number;
  readonly unreadable: IncomingMessage['unreadable'] | null;
  readonly sent_at: number;
}

interface FileRow extends ThreadKey {
  readonly message: string;
  readonly file: string;
}

const toMessage = (row: Row): IncomingMessage => ({
  workspace: row.workspace,
  channel: row.channel,
  thread: row.thread,
  id: row.message,
  revision: row.revision,
  author: row.author,
  kind: row.kind,
  text: row.text,
  ...(row.tap_action === null ? {} : { tap: { action: row.tap_action, value: row.tap_value ?? '' } }),
  addressed: row.addressed === 1,
  shared: row.shared === 1,
  ...(row.guest === 1 ? { guest: true as const } : {}),
  ...(row.unreadable === null ? {} : { unreadable: row.unreadable ?? 'unavailable' }),
  sentAt: row.sent_at,
});

export const inbox = (db: Database) => {
  const insert = db.prepare(`
    INSERT INTO inbox (workspace, channel, thread, message, revision, delivery, author, kind, text, tap_action, tap_value, addressed, shared, sent_at, guest, file)
    VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING`);
  const select = db.prepare<[number], Row>(`
    SELECT workspace, channel, thread, message, revision, author, kind, text, tap_action, tap_value, addressed, shared, guest, unreadable, sent_at
    FROM inbox WHERE handled = 0 AND file IS NULL ORDER BY seq LIMIT ?`);
  const finish = db.prepare(`
    UPDATE inbox SET handled = 1, text = '', tap_action = NULL, tap_value = NULL
    WHERE workspace = ? AND channel = ? AND message = ? AND revision = ? AND handled = 0`);
  const setAside = db.prepare(`
    UPDATE inbox SET handled = 1, thread = '', author = '', text = '', tap_action = NULL, tap_value = NULL, addressed = 0
    WHERE workspace = ? AND channel = ? AND message = ? AND revision = ?`);
  const handled = db.prepare<string[], { handled: number }>(
    'SELECT handled FROM inbox WHERE workspace = ? AND channel = ? AND message = ? AND revision = ?',
  );
  const addressed = db.prepare('SELECT 1 FROM inbox WHERE workspace = ? AND channel = ? AND thread = ? AND addressed = 1 LIMIT 1');

  const heard = db.prepare<string[], { shared: number }>(
    'SELECT shared FROM inbox WHERE workspace = ? AND channel = ? ORDER BY seq DESC LIMIT 1',
  );
  const handledAny = db.prepare('SELECT 1 FROM inbox WHERE workspace = ? AND handled = 1 LIMIT 1');
  const files = db.prepare<[], FileRow>('SELECT workspace, channel, thread, message, file FROM inbox WHERE file IS NOT NULL ORDER BY seq');
  const fill = db.prepare(`
    UPDATE inbox SET text = ?, unreadable = ?, file = NULL WHERE workspace = ? AND channel = ? AND message = ? AND file IS NOT NULL`);

  return {
    receive: (message: IncomingMessage, delivery: string, file: string | null): 'new' | 'repeat' => {
      const { workspace, channel, thread, id, revision, author, kind, text, tap } = message;
      const added = insert.run(
        workspace,
        channel,
        thread,
        id,
        revision,
        delivery,
        author,
        kind,
        text,
        tap?.action ?? null,
        tap?.value ?? null,
        message.addressed ? 1 : 0,
        message.shared ? 1 : 0,
        Math.trunc(message.sentAt),
        message.guest ? 1 : 0,
        file,
      );
      return added.changes === 1 ? 'new' : 'repeat';
    },

    waiting: (atMost: number): readonly IncomingMessage[] => select.all(atMost).map(toMessage),

    /** Throws when the message was never received. */
    isHandled: ({ workspace, channel, id, revision }: IncomingMessage): boolean => {
      const row = handled.get(workspace, channel, id, revision);
      if (!row) throw new Error('a message was answered that was never received');
      return row.handled === 1;
    },

    /** Marks the message handled and blanks its text. */
    finish: ({ workspace, channel, id, revision }: IncomingMessage): void => void finish.run(workspace, channel, id, revision),

    /** Whether the channel was shared with another organisation when last heard of; undefined when it never was. */
    isShared: (workspace: string, channel: string): boolean | undefined => {
      const row = heard.get(workspace, channel);
      return row && row.shared === 1;
    },

    hasHandled: (workspace: string): boolean => handledAny.get(workspace) !== undefined,

    filesToFetch: (): readonly FileToFetch[] => files.all().map(({ message, file, ...key }) => ({ key, message, file })),

    fill: ({ key, message }: FileToFetch, content: FileContent): void => {
      const [text, unreadable] = 'text' in content ? [content.text, null] : ['', content.unreadable];
      fill.run(text, unreadable, key.workspace, key.channel, message);
    },

    /** Handled, and with nothing left of it but the ids that make a repeat known. */
    setAside: ({ workspace, channel, id, revision }: IncomingMessage): void => void setAside.run(workspace, channel, id, revision),

    addressedIn: ({ workspace, channel, thread }: ThreadKey): boolean => addressed.get(workspace, channel, thread) !== undefined,
  };
};
