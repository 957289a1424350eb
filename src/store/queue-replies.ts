// How replies enter the outbox: never twice for one cause, and never two for one message where the first still waits.

import type { Database } from 'better-sqlite3';
import type { IncomingMessage, OutgoingReply } from '../assistant/ports.ts';

interface Earlier {
  readonly id: string;
  readonly state: string;
  readonly unsure: number;
}

interface SameId {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
}

export const queueReplies = (db: Database) => {
  const insert = db.prepare(`
    INSERT INTO outbox (id, workspace, channel, thread, purpose, about, slot, reply) VALUES (?, ?, ?, ?, ?, ?, ?, ?)`);
  const sameId = db.prepare<[string], SameId>('SELECT workspace, channel, thread FROM outbox WHERE id = ?');
  const newest = db.prepare<[string, string, string, number], Earlier>(`
    SELECT id, state, unsure FROM outbox
    WHERE workspace = ? AND channel = ? AND about = ? AND slot = ? AND purpose <> 'reminder'
    ORDER BY seq DESC LIMIT 1`);
  const exchange = db.prepare('UPDATE outbox SET purpose = ?, reply = ?, due_at = 0 WHERE id = ?');
  const withdraw = db.prepare(`
    UPDATE outbox SET state = 'given up', reason = 'the message was edited or deleted first', ended_at = ?, reply = ''
    WHERE workspace = ? AND channel = ? AND about = ? AND slot >= ? AND purpose <> 'reminder' AND state = 'waiting' AND unsure = 0`);

  const put = (out: OutgoingReply, slot: number): void => {
    const { workspace, channel, thread } = out.to;
    const known = sameId.get(out.id);
    if (known) {
      if (known.workspace === workspace && known.channel === channel && known.thread === thread) return;
      throw new Error('two replies to different threads have the same id');
    }
    const reply = JSON.stringify(out.reply);
    const earlier = out.purpose === 'reminder' ? undefined : newest.get(workspace, channel, out.about, slot);
    if (earlier?.state === 'waiting' && earlier.unsure === 0) exchange.run(out.purpose, reply, earlier.id);
    else insert.run(out.id, workspace, channel, thread, out.purpose, out.about, slot, reply);
  };

  /** A message's replies keep their places: the second reply of an edit replaces the second reply of the message. */
  const putAll = (replies: readonly OutgoingReply[]): void => {
    const places = new Map<string, number>();
    for (const out of replies) {
      const slot = places.get(out.about) ?? 0;
      places.set(out.about, slot + 1);
      put(out, slot);
    }
  };

  return {
    reminders: putAll,

    /** Also withdraws what still waits to be said about an earlier wording that now gets fewer replies, or none. */
    answers: (message: IncomingMessage, replies: readonly OutgoingReply[]): void => {
      putAll(replies);
      if (message.kind !== 'edit' && message.kind !== 'delete') return;
      const kept = replies.filter((out) => out.about === message.id).length;
      withdraw.run(Math.trunc(message.sentAt), message.workspace, message.channel, message.id, kept);
    },
  };
};
