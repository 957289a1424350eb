// Who asked and what is still to be fetched, in the inbox; summaries, in the outbox; workspaces that installed the app themselves.

import type { Migration } from './migration.ts';

export const slackAtHome: Migration = {
  number: 2,
  name: 'slack at home',
  sql: `
ALTER TABLE inbox ADD COLUMN guest INTEGER NOT NULL DEFAULT 0 CHECK (guest IN (0, 1));
-- Where a dropped file is still to be fetched from, as the host wrote it; NULL once its content is in the text, or it could not be had.
ALTER TABLE inbox ADD COLUMN file TEXT;
ALTER TABLE inbox ADD COLUMN unreadable TEXT CHECK (unreadable IN ('too large', 'not a list', 'unavailable'));
DROP INDEX inbox_waiting;
CREATE INDEX inbox_waiting ON inbox (seq) WHERE handled = 0 AND file IS NULL;
CREATE INDEX inbox_files ON inbox (seq) WHERE file IS NOT NULL;
CREATE INDEX inbox_channel ON inbox (workspace, channel, seq);

-- A condition on a column cannot be changed in place, so the outbox is made again with one more purpose.
CREATE TABLE outbox_new (
  seq INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  workspace TEXT NOT NULL,
  channel TEXT NOT NULL,
  thread TEXT NOT NULL,
  purpose TEXT NOT NULL CHECK (purpose IN ('answer', 'reminder', 'apology', 'summary')),
  about TEXT NOT NULL,
  slot INTEGER NOT NULL,
  reply TEXT NOT NULL,
  state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'begun', 'posted', 'given up')),
  attempts INTEGER NOT NULL DEFAULT 0,
  due_at INTEGER NOT NULL DEFAULT 0,
  unsure INTEGER NOT NULL DEFAULT 0 CHECK (unsure IN (0, 1)),
  first_tried_at INTEGER,
  ended_at INTEGER,
  host_id TEXT,
  reason TEXT,
  CHECK ((state IN ('posted', 'given up')) = (ended_at IS NOT NULL)),
  CHECK ((state = 'posted') = (host_id IS NOT NULL))
) STRICT;
INSERT INTO outbox_new
  SELECT seq, id, workspace, channel, thread, purpose, about, slot, reply, state, attempts, due_at, unsure, first_tried_at, ended_at, host_id, reason
  FROM outbox;
DROP TABLE outbox;
ALTER TABLE outbox_new RENAME TO outbox;
CREATE INDEX outbox_pending ON outbox (workspace, channel, thread, seq) WHERE ended_at IS NULL;
CREATE INDEX outbox_about ON outbox (workspace, channel, about, slot, seq);

-- The app as a workspace installed it: its token, sealed with a key that is not in here.
CREATE TABLE installations (
  workspace TEXT NOT NULL PRIMARY KEY,
  sealed TEXT NOT NULL,
  installed_at INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
`,
};
