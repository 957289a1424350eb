// Puts a backup in the place of the database. The bot must be stopped; what was there before is set aside, never deleted.

import { chmodSync, constants, copyFileSync, existsSync, renameSync } from 'node:fs';
import { takeLease } from './lease.ts';
import { openDatabase } from './open-database.ts';
import { checkCopy } from './sound-copy.ts';
import { named, StoreTrouble } from './store-trouble.ts';

export interface RestoreOptions {
  readonly backup: string;
  readonly path: string; // the database to replace
  readonly now: number; // epoch milliseconds
}

/** Returns where the old database was put, if there was one. Throws StoreTrouble when the backup is unsound or a bot still runs on the database. */
export const restore = ({ backup, path, now }: RestoreOptions): string | undefined => {
  checkCopy(backup);
  return named(path, () => {
    const aside = `${path}.replaced-${now}`;
    const hadOne = existsSync(path);
    if (hadOne) {
      refuseIfInUse(path, now);
      for (const end of ['', '-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
    }
    copyFileSync(backup, path, constants.COPYFILE_EXCL);
    chmodSync(path, 0o600);
    checkCopy(path);
    return hadOne ? aside : undefined;
  });
};

const refuseIfInUse = (path: string, now: number): void => {
  try {
    const db = openDatabase({ path });
    try {
      takeLease(db, path, now).release();
    } finally {
      db.close();
    }
  } catch (error) {
    // Only a live bot is a reason to stop: a database too damaged to ask is why one restores.
    if (error instanceof StoreTrouble && (error.code === 'database-in-use' || error.code === 'database-locked')) throw error;
  }
};
