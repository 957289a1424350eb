// The assistant's Store on one SQLite file: opening it (migrated, leased, interrupted posts marked) and its transactions.

import type { Database } from 'better-sqlite3';
import type { Clock, Outcome, Store, StoredStudio } from '../assistant/ports.ts';
import { copyBeforeMigrating } from './backup.ts';
import { currentFolds, type Folds } from './folds.ts';
import { deleteThread, overwriteLog } from './forget.ts';
import { inbox } from './inbox.ts';
import { leaseLasts, takeLease } from './lease.ts';
import { migrate } from './migrate.ts';
import { openDatabase } from './open-database.ts';
import { outbox } from './outbox.ts';
import { queueReplies } from './queue-replies.ts';
import { refold } from './refold.ts';
import { reminders } from './reminders.ts';
import { named, StoreTrouble } from './store-trouble.ts';
import { studios } from './studios.ts';
import { threads } from './threads.ts';

export interface OpenStoreOptions {
  readonly path: string; // ':memory:' keeps nothing
  readonly folds?: Folds;
  readonly clock?: Clock; // for the lease and the ledger; the machine's own when left out
  readonly busyMilliseconds?: number;
  readonly powerSafe?: boolean; // see openDatabase
  readonly watch?: StoreWatch;
}

/** Hears how the database fares, whoever uses it. */
export interface StoreWatch {
  failed(trouble: StoreTrouble): void;
  /** Something was written. */
  worked(): void;
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
  const { path, folds = currentFolds, clock = { now: () => Date.now() }, watch } = options;
  const db = openDatabase(options);
  try {
    return named(path, () => startStore(db, path, folds, clock, watch));
  } catch (error) {
    db.close();
    throw error;
  }
};

const startStore = (db: Database, path: string, folds: Folds, clock: Clock, watch: StoreWatch | undefined): OpenStore => {
  migrate(db, { path, now: clock.now(), backUp: (next) => void copyBeforeMigrating(db, path, next) });
  const lease = takeLease(db, path, clock.now());
  const transaction = db.transaction((work: () => unknown) => {
    lease.check();
    return work();
  });
  const watched = <T>(work: () => T): T => {
    try {
      return named(path, work);
    } catch (error) {
      if (error instanceof StoreTrouble) watch?.failed(error);
      throw error;
    }
  };
  const read = watched;
  const write = <T>(work: () => T): T => {
    const result = watched(() => transaction.immediate(work) as T);
    watch?.worked();
    return result;
  };
  const renewal = setInterval(() => {
    try {
      write(() => lease.renew(clock.now()));
    } catch {
      // The watch was told; the next write meets the same trouble.
    }
  }, leaseLasts / 3).unref();

  const parts = { inbox: inbox(db), threads: threads(db, folds.version), studios: studios(db, folds), replies: queueReplies(db) };
  const out = outbox(db);
  const said = reminders(db);
  write(() => {
    refold(db, folds);
    out.markInterrupted();
    out.hurry();
  });

  return {
    path,
    database: db,
    folds,
    write: (work) => {
      parts.threads.forgetRead();
      return write(work);
    },
    close: () => {
      clearInterval(renewal);
      if (!db.open) return;
      try {
        lease.release();
      } catch {
        // On a full disk it cannot be given back; whoever comes next sees that this process is gone.
      }
      db.close();
    },

    receive: (message, delivery) => write(() => parts.inbox.receive(message, delivery, null)),
    receiveFile: (message, delivery, file) => write(() => parts.inbox.receive(message, delivery, file)),
    filesToFetch: () => read(() => parts.inbox.filesToFetch()),
    fill: (file, content) => write(() => parts.inbox.fill(file, content)),
    isShared: (workspace, channel) => read(() => parts.inbox.isShared(workspace, channel)),
    hasHandled: (workspace) => read(() => parts.inbox.hasHandled(workspace)),
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
    forget: (key, asking, replies) => {
      parts.threads.forgetRead();
      write(() => {
        parts.inbox.setAside(asking);
        deleteThread(db, key);
        parts.replies.reminders(replies);
      });
      overwriteLog(db);
    },
    summaryOf: (key) => read(() => out.summaryOf(key)),

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
const commit = (parts: Parts, { message, thread = message, entries, expected, event, studio, replies }: Outcome): 'stored' | 'moved' => {
  const { workspace } = message;
  if (parts.inbox.isHandled(message)) return 'stored';
  if (parts.threads.versionOf(thread) !== expected.thread) return 'moved';
  if (parts.studios.versionOf(workspace) !== expected.studio) return 'moved';
  parts.inbox.finish(message);
  parts.threads.extend(thread, entries, event);
  if (studio) parts.studios.keep(workspace, studio);
  parts.replies.answers(message, replies);
  return 'stored';
};
