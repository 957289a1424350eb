// Brings a database to the schema of this code. Each step and its ledger row are one transaction, so a crash leaves a whole step or none.

import type { Database } from 'better-sqlite3';
import { migrations } from './migrations/in-order.ts';
import type { Migration } from './migrations/migration.ts';
import { StoreTrouble } from './store-trouble.ts';

export interface MigrateOptions {
  readonly path: string; // for the sentence only
  readonly now: number; // epoch milliseconds, kept in the ledger
  readonly steps?: readonly Migration[];
  /** Called once before the first step on a database that already holds something. */
  readonly backUp: (next: number) => void;
}

/** Returns the numbers of the steps applied. Throws StoreTrouble 'database-newer' when the database knows more steps than this code. */
export const migrate = (db: Database, { path, now, steps = migrations, backUp }: MigrateOptions): readonly number[] => {
  db.exec('CREATE TABLE IF NOT EXISTS migrations (number INTEGER PRIMARY KEY, name TEXT NOT NULL, applied_at INTEGER NOT NULL) STRICT');
  const at = schemaNumber(db);
  const newest = steps.at(-1)?.number ?? 0;
  if (at > newest) throw newer(path, at, newest);
  const missing = steps.filter((step) => step.number > at);
  const next = missing[0];
  if (at > 0 && next) backUp(next.number);
  return missing.filter((step) => applyStep(db, step, now)).map((step) => step.number);
};

const newer = (path: string, at: number, newest: number): StoreTrouble =>
  new StoreTrouble(
    'database-newer',
    `The database ${path} was written by a newer version (schema ${at}, this one knows ${newest}). Start the newer version, or restore a backup made before it.`,
  );

/** For looking without migrating. Throws StoreTrouble when the database is not of this code's schema and fold. */
export const checkSchema = (db: Database, path: string, fold: number): void => {
  const newest = migrations.at(-1)?.number ?? 0;
  const ours = db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'migrations'").get() !== undefined;
  const at = ours ? schemaNumber(db) : 0;
  if (at > newest) throw newer(path, at, newest);
  const stale = at === newest ? db.prepare('SELECT 1 FROM threads WHERE fold <> ? LIMIT 1').get(fold) : undefined;
  if (at < newest || stale !== undefined)
    throw new StoreTrouble('database-older', `The database ${path} has not been used with this version yet. Start the bot once first.`);
};

/** The last migration applied; 0 for a new database. */
export const schemaNumber = (db: Database): number =>
  db.prepare<[], { at: number | null }>('SELECT max(number) AS at FROM migrations').get()?.at ?? 0;

/** False when another process applied it between our look and our lock. */
const applyStep = (db: Database, step: Migration, now: number): boolean =>
  db
    .transaction(() => {
      if (schemaNumber(db) >= step.number) return false;
      db.exec(step.sql);
      db.prepare('INSERT INTO migrations (number, name, applied_at) VALUES (?, ?, ?)').run(step.number, step.name, now);
      return true;
    })
    .immediate();
