// The assistant's Store on one SQLite file: opening it (migrated, leased, interrupted posts marked) and its transactions.

import type { Database } from 'better-sqlite3';
import type { Clock, Outcome, Store, StoredStudio } from '../assistant/ports.ts';
import { copyBeforeMigrating } from './backup.ts';
import { currentFolds, type Folds } from './folds.ts';
import { inbox } from './inbox.ts';
import { leaseLasts, takeLease } from './lease.ts';
import { migrate } from './migrate.ts';
import { openDatabase } from './open-database.ts';
import { outbox } from './outbox.ts';
import { queueReplies } from './queue-replies.ts';
import { refold } from './refold.ts';
import { reminders } from './reminders.ts';
import { named } from './store-trouble.ts';
import { studios } from './studios.ts';
import { threads } from './threads.ts';

export interface OpenStoreOptions {
  readonly path: string; // ':memory:' keeps nothing
  readonly folds?: Folds;
  readonly clock?: Clock; // for the lease and the ledger; the machine's own when left out
  readonly busyMilliseconds?: number;
  readonly powerSafe?: boolean; // see openDatabase
}

export interface OpenStore extends Store {
  readonly path: string;
  readonly database: Database; // for backup, check, export: never for handling messages
  readonly folds: Folds;
  /** What is kept of a studio; undefined before its settings were first given. */
  storedStudio(workspace: string): StoredStudio | undefined;
  /** Runs the work in one transaction, under the lease. Throws StoreTrouble when the database fails. */
  write<T>(work: () => T): T;
  /** Ends the lease. Nothing may be used afterwards. */
  close(): void;
}

/** Throws StoreTrouble when the database cannot be used: see its codes. */
export const openStore = (options: OpenStoreOptions): OpenStore => {
  const { path, folds = currentFolds, clock = { now: () => Date.now() } } = options;
  const db = openDatabase(options);
  try {
    return named(path, () => startStore(db, path, folds, clock));
  } catch (error) {
    db.close();
    throw error;
  }
};

const startStore = (db: Database, path: string, folds: Folds, clock: Clock): OpenStore => {
  migrate(db, { path, now: clock.now(), backUp: (next) => void copyBeforeMigrating(db, path, next) });
  const lease = takeLease(db, path, clock.now());
  const renewal = setInterval(() => {
    try {
      lease.renew(clock.now());
    } catch {
      // The next write meets the same trouble and names it.
    }
  }, leaseLasts / 3).unref();

  const transaction = db.transaction((work: () => unknown) => {
    lease.check();
    return work();
  });
  const write = <T>(work: () => T): T => named(path, () => transaction.immediate(work) as T);
  const read = <T>(work: () => T): T => named(path, work);

  const parts = { inbox: inbox(db), threads: threads(db, folds.version), studios: studios(db, folds), replies: queueReplies(db) };
  const out = outbox(db);
  const said = reminders(db);
  write(() => {
    refold(db, folds);
    out.markInterrupted();
  });

  return {
    path,
    database: db,
    folds,
    write,
    close: () => {
      clearInterval(renewal);
      if (!db.open) return;
      lease.release();
      db.close();
    },

    receive: (message, delivery) => write(() => parts.inbox.receive(message, delivery)),
    waiting: (atMost = 10_000) => read(() => parts.inbox.waiting(atMost)),
    knows: (key) => read(() => parts.threads.versionOf(key) > 0 || parts.inbox.addressedIn(key)),
    thread: (key) => read(() => parts.threads.thread(key)),
    entries: (key) => read(() => parts.threads.entries(key)),
    storedStudio: (workspace) => read(() => parts.studios.studio(workspace)),
    studioEntries: (workspace) => read(() => parts.studios.entries(workspace)),
    studio: (workspace, initial) => {
      if (read(() => parts.studios.isStale(workspace, initial))) write(() => parts.studios.follow(workspace, initial));
      const studio = read(() => parts.studios.studio(workspace));
      if (!studio) throw new Error('a studio was not kept');
      return studio;
    },
    hasChosenSettings: (workspace) => read(() => parts.studios.hasChosen(workspace)),
    chooseSettings: (workspace, initial, chosen) =>
      write(() => {
        if (parts.studios.isStale(workspace, initial)) parts.studios.follow(workspace, initial);
        const stored = parts.studios.studio(workspace);
        if (stored) parts.studios.keep(workspace, { ...stored.state, settings: chosen });
      }),
    openEvents: (workspace, from) => read(() => parts.threads.openEvents(workspace, from)),
    commit: (outcome) => write(() => commit(parts, outcome)),

    unsent: (now) => read(() => out.unsent(now)),
    begin: (id, now) => write(() => out.begin(id, now)),
    posted: (id, hostId, now) => write(() => out.posted(id, hostId, now)),
    postpone: (id, until, reason, unsure = false) => write(() => out.postpone(id, until, reason, unsure)),
    giveUp: (id, reason, now) => write(() => out.giveUp(id, reason, now)),

    remind: (workspace, channel, kind, day, replies, now) =>
      write(() => {
        if (!said.claim(workspace, channel, kind, day, now)) return false;
        parts.replies.reminders(replies);
        return true;
      }),
    lastReminder: (workspace, channel, kind) => read(() => said.last(workspace, channel, kind)),
  };
};

interface Parts {
  readonly inbox: ReturnType<typeof inbox>;
  readonly threads: ReturnType<typeof threads>;
  readonly studios: ReturnType<typeof studios>;
  readonly replies: ReturnType<typeof queueReplies>;
}

/** Inside one transaction: the versions are compared and moved under the same lock. */
const commit = (parts: Parts, { message, entries, expected, event, studio, replies }: Outcome): 'stored' | 'moved' => {
  const { workspace } = message;
  if (parts.inbox.isHandled(message)) return 'stored';
  if (parts.threads.versionOf(message) !== expected.thread) return 'moved';
  if (parts.studios.versionOf(workspace) !== expected.studio) return 'moved';
  parts.inbox.finish(message);
  parts.threads.extend(message, entries, event);
  if (studio) parts.studios.keep(workspace, studio);
  parts.replies.answers(message, replies);
  return 'stored';
};
