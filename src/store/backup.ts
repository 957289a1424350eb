// Backups: made while the bot works, read back before they count, dated, and thinned out by rule.

import { chmodSync, closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Database } from 'better-sqlite3';
import { type BackupRule, backupName, superfluous, usualBackupRule } from './backup-rule.ts';
import { checkCopy, settleCopy } from './sound-copy.ts';
import { asStoreTrouble } from './store-trouble.ts';

export interface BackUpOptions {
  readonly directory: string; // made if it isn't there, for the owner only
  readonly now: number; // epoch milliseconds
  readonly rule?: BackupRule;
}

export interface BackedUp {
  readonly path: string;
  readonly bytes: number;
  readonly removed: readonly string[]; // names of older backups the rule let go
}

/** Throws StoreTrouble; then no backup of that name is left and no older one was removed. */
export const backUp = async (db: Database, { directory, now, rule = usualBackupRule }: BackUpOptions): Promise<BackedUp> => {
  const path = join(directory, backupName(new Date(now)));
  const part = `${path}.part`;
  try {
    mkdirSync(directory, { recursive: true, mode: 0o700 });
    rmSync(part, { force: true });
    closeSync(openSync(part, 'wx', 0o600));
    await db.backup(part);
    finishCopy(part, path);
    const removed = superfluous(readdirSync(directory), rule);
    for (const name of removed) rmSync(join(directory, name));
    return { path, bytes: statSync(path).size, removed };
  } catch (error) {
    if (existsSync(part)) rmSync(part);
    throw asStoreTrouble(error, part);
  }
};

/** The copy made before a migration, beside the database: "loft.db.before-schema-2". Synchronous, because nothing may happen meanwhile. */
export const copyBeforeMigrating = (db: Database, path: string, next: number): string | undefined => {
  if (db.memory) return undefined;
  const copy = `${path}.before-schema-${next}`;
  const part = `${copy}.part`;
  rmSync(part, { force: true });
  db.prepare('VACUUM INTO ?').run(part);
  chmodSync(part, 0o600);
  finishCopy(part, copy);
  return copy;
};

const finishCopy = (part: string, path: string): void => {
  settleCopy(part);
  checkCopy(part);
  flush(part);
  renameSync(part, path);
  flush(dirname(path));
};

/** Waits until the disk has it: a rename alone may outlive the bytes it names. */
const flush = (path: string): void => {
  const file = openSync(path, 'r');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
};
