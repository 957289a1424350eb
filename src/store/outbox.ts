// What goes out. A reply is stored with what it answers and posted later; each thread's replies go in order, one at a time,
// and a post whose end is unknown is marked so that it is looked for before it is made again.

import type { Database } from 'better-sqlite3';
import { type OutgoingReply, type QueuedReply, summaryAbout, type ThreadKey } from '../assistant/ports.ts';
import type { Reply } from '../reply/reply.ts';

interface Row {
  readonly id: string;
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
  readonly purpose: OutgoingReply['purpose'];
  readonly about: string;
  readonly reply: string;
  readonly attempts: number;
  readonly unsure: number;
  readonly first_tried_at: number | null;
  readonly replaces: string | null;
}

// The host's message to update: the newest posted reply to the same message, in the same place among that message's replies.
const columns = `id, workspace, channel, thread, purpose, about, reply, attempts, unsure, first_tried_at,
  CASE WHEN purpose = 'reminder' THEN NULL ELSE (
    SELECT host_id FROM outbox AS earlier
    WHERE earlier.workspace = o.workspace AND earlier.channel = o.channel AND earlier.about = o.about AND earlier.slot = o.slot
      AND earlier.purpose <> 'reminder' AND earlier.state = 'posted' AND earlier.seq < o.seq
    ORDER BY earlier.seq DESC LIMIT 1
  ) END AS replaces`;

const mostPerChannel = 3;

const toQueued = (row: Row): QueuedReply => ({
  id: row.id,
  to: { workspace: row.workspace, channel: row.channel, thread: row.thread },
  purpose: row.purpose,
  about: row.about,
  // Looked at for one of the many that a look at the queue returns.
  get reply() {
    return JSON.parse(row.reply) as Reply;
  },
  attempts: row.attempts,
  ...(row.first_tried_at === null ? {} : { firstTriedAt: row.first_tried_at }),
  interrupted: row.unsure === 1,
  ...(row.replaces === null ? {} : { replaces: row.replaces }),
});

export const outbox = (db: Database) => {
  // The first of each thread, and of those a few per channel: a channel takes one post a second, so more would be read in vain.
  const due = db.prepare<[number], Row>(`
    WITH heads AS MATERIALIZED (
      SELECT workspace, channel, min(seq) AS seq FROM outbox WHERE ended_at IS NULL GROUP BY workspace, channel, thread
    ), next AS (
      SELECT seq, row_number() OVER (PARTITION BY heads.workspace, heads.channel ORDER BY seq) AS place
      FROM heads JOIN outbox USING (seq) WHERE state = 'waiting' AND due_at <= ?
    )
    SELECT ${columns} FROM next JOIN outbox AS o USING (seq) WHERE place <= ${mostPerChannel} ORDER BY seq`);
  const find = db.prepare<[string], Row>(`SELECT ${columns} FROM outbox AS o WHERE id = ?`);
  const begin = db.prepare(`
    UPDATE outbox SET state = 'begun', attempts = attempts + 1, first_tried_at = coalesce(first_tried_at, ?)
    WHERE id = ? AND state = 'waiting'`);
  const posted = db.prepare(`
    UPDATE outbox SET state = 'posted', host_id = ?, ended_at = ?, reply = '', unsure = 0, reason = NULL WHERE id = ? AND ended_at IS NULL`);
  const postpone = db.prepare(`UPDATE outbox SET state = 'waiting', due_at = ?, reason = ?, unsure = ? WHERE id = ? AND state = 'begun'`);
  const giveUp = db.prepare(`UPDATE outbox SET state = 'given up', reason = ?, ended_at = ?, reply = '' WHERE id = ? AND ended_at IS NULL`);
  const summary = db.prepare<string[], { host_id: string }>(`
    SELECT host_id FROM outbox WHERE workspace = ? AND channel = ? AND about = ? AND slot = 0 AND purpose = 'summary' AND state = 'posted'
    ORDER BY seq DESC LIMIT 1`);
  const interrupt = db.prepare(`UPDATE outbox SET state = 'waiting', due_at = 0, unsure = 1 WHERE ended_at IS NULL AND state = 'begun'`);
  const hurry = db.prepare('UPDATE outbox SET due_at = 0 WHERE ended_at IS NULL AND due_at > 0');

  return {
    unsent: (now: number): readonly QueuedReply[] => due.all(now).map(toQueued),

    begin: (id: string, now: number): QueuedReply | undefined => {
      const row = find.get(id);
      if (!row || begin.run(now, id).changes === 0) return undefined;
      return toQueued({ ...row, attempts: row.attempts + 1, first_tried_at: row.first_tried_at ?? now });
    },

    posted: (id: string, hostId: string, now: number): void => void posted.run(hostId, now, id),
    postpone: (id: string, until: number, reason: string, unsure: boolean): void => void postpone.run(until, reason, unsure ? 1 : 0, id),
    giveUp: (id: string, reason: string, now: number): void => void giveUp.run(reason, now, id),

    summaryOf: ({ workspace, channel, thread }: ThreadKey): string | undefined =>
      summary.get(workspace, channel, summaryAbout(thread))?.host_id,

    /** At start: whatever an earlier run had begun may or may not have arrived. */
    markInterrupted: (): number => interrupt.run().changes,
    /** At start: a restart is how a token or a network is put right, so nothing waits out what it waited for before. */
    hurry: (): void => void hurry.run(),
  };
};
