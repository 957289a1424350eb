// Whether a copy of the database can be relied on. A backup nobody read back is a hope, so every one is read through once, where it lies.

import Database from 'better-sqlite3';
import { schemaNumber } from './migrate.ts';
import { migrations } from './migrations/in-order.ts';
import { applicationId } from './open-database.ts';
import { named, StoreTrouble } from './store-trouble.ts';

/** Makes the copy one file that needs no log beside it and that nobody holds. */
export const settleCopy = (path: string): void =>
  named(path, () => {
    const copy = new Database(path, { fileMustExist: true });
    try {
      copy.pragma('journal_mode = DELETE');
      copy.prepare('DELETE FROM lease').run();
    } finally {
      copy.close();
    }
  });

/** Throws StoreTrouble: 'backup-unsound', 'database-newer', or what kept it from being read. */
export const checkCopy = (path: string): void =>
  named(path, () => {
    const copy = new Database(path, { fileMustExist: true, readonly: true });
    try {
      if (copy.pragma('application_id', { simple: true }) !== applicationId) throw unsound(path, 'it is not a database of this bot');
      const answer = copy.pragma('integrity_check', { simple: true });
      if (answer !== 'ok') throw unsound(path, String(answer));
      if ((copy.pragma('foreign_key_check') as readonly unknown[]).length > 0) throw unsound(path, 'entries without their thread');
      const at = schemaNumber(copy);
      const newest = migrations.at(-1)?.number ?? 0;
      if (at > newest) {
        throw new StoreTrouble(
          'database-newer',
          `The backup ${path} was made by a newer version (schema ${at}, this one knows ${newest}).`,
        );
      }
    } finally {
      copy.close();
    }
  });

const unsound = (path: string, why: string): StoreTrouble =>
  new StoreTrouble('backup-unsound', `The backup ${path} cannot be relied on: ${why}.`);
