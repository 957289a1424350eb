CREATE INDEX entries_studio ON entries (workspace, seq) WHERE scope = 'studio';

CREATE INDEX inbox_channel ON inbox (workspace, channel, seq);

CREATE INDEX inbox_files ON inbox (seq) WHERE file IS NOT NULL;

CREATE INDEX inbox_thread ON inbox (workspace, channel, thread, addressed);

CREATE INDEX inbox_waiting ON inbox (seq) WHERE handled = 0 AND file IS NULL;

CREATE INDEX outbox_about ON outbox (workspace, channel, about, slot, seq);

CREATE INDEX outbox_pending ON outbox (workspace, channel, thread, seq) WHERE ended_at IS NULL;

CREATE INDEX threads_by_date ON threads (workspace, event_date, seq) WHERE cancelled = 0;

CREATE TABLE entries (
  seq INTEGER PRIMARY KEY,
  workspace TEXT NOT NULL,
  channel TEXT,
  thread TEXT,
  position INTEGER NOT NULL CHECK (position > 0),
  scope TEXT NOT NULL CHECK (scope IN ('event', 'studio')),
  message TEXT NOT NULL,
  revision TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('stated', 'edited', 'deleted', 'undone', 'asked')),
  author TEXT NOT NULL,
  at INTEGER NOT NULL,
  format INTEGER NOT NULL,
  facts TEXT NOT NULL,
  open TEXT,
  UNIQUE (workspace, channel, thread, position),
  FOREIGN KEY (workspace, channel, thread) REFERENCES threads (workspace, channel, thread) DEFERRABLE INITIALLY DEFERRED,
  CHECK ((channel IS NULL) = (thread IS NULL)),
  CHECK (channel IS NOT NULL OR scope = 'studio')
) STRICT;

CREATE TABLE inbox (
  seq INTEGER PRIMARY KEY,
  workspace TEXT NOT NULL,
  channel TEXT NOT NULL,
  thread TEXT NOT NULL,
  message TEXT NOT NULL,
  revision TEXT NOT NULL,
  delivery TEXT NOT NULL,
  author TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('new', 'edit', 'delete', 'tap', 'file')),
  text TEXT NOT NULL,
  tap_action TEXT,
  tap_value TEXT,
  addressed INTEGER NOT NULL CHECK (addressed IN (0, 1)),
  shared INTEGER NOT NULL CHECK (shared IN (0, 1)),
  sent_at INTEGER NOT NULL,
  handled INTEGER NOT NULL DEFAULT 0 CHECK (handled IN (0, 1)), guest INTEGER NOT NULL DEFAULT 0 CHECK (guest IN (0, 1)), file TEXT, unreadable TEXT CHECK (unreadable IN ('too large', 'not a list', 'unavailable')),
  UNIQUE (workspace, delivery),
  UNIQUE (workspace, channel, message, revision)
) STRICT;

CREATE TABLE installations (
  workspace TEXT NOT NULL PRIMARY KEY,
  sealed TEXT NOT NULL,
  installed_at INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE lease (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  holder TEXT NOT NULL,
  host TEXT NOT NULL,
  pid INTEGER NOT NULL,
  born TEXT NOT NULL,
  renewed_at INTEGER NOT NULL,
  expires_at INTEGER NOT NULL
) STRICT;

CREATE TABLE migrations (number INTEGER PRIMARY KEY, name TEXT NOT NULL, applied_at INTEGER NOT NULL) STRICT;

CREATE TABLE "outbox" (
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

CREATE TABLE reminders (
  workspace TEXT NOT NULL,
  channel TEXT NOT NULL,
  kind TEXT NOT NULL,
  day TEXT NOT NULL,
  claimed_at INTEGER NOT NULL,
  PRIMARY KEY (workspace, channel, kind, day)
) STRICT, WITHOUT ROWID;

CREATE TABLE studios (
  workspace TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL DEFAULT 0,
  settings TEXT NOT NULL,
  chosen INTEGER NOT NULL DEFAULT 0 CHECK (chosen IN (0, 1)),
  state TEXT NOT NULL,
  fold INTEGER NOT NULL
) STRICT;

CREATE TABLE threads (
  seq INTEGER PRIMARY KEY,
  workspace TEXT NOT NULL,
  channel TEXT NOT NULL,
  thread TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version > 0),
  state TEXT NOT NULL,
  fold INTEGER NOT NULL,
  event_date TEXT GENERATED ALWAYS AS (state ->> '$.date') STORED,
  cancelled INTEGER NOT NULL GENERATED ALWAYS AS (coalesce(state ->> '$.cancelled', 0)) STORED,
  UNIQUE (workspace, channel, thread)
) STRICT;

CREATE TRIGGER entries_are_append_only
BEFORE UPDATE OF seq, workspace, position, scope, message, revision, kind, at, format, facts, open ON entries
BEGIN
  SELECT raise(ABORT, 'entries are append-only');
END;
