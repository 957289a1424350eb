// What can be wrong with the database itself, as one coded error with a sentence for whoever runs the bot. Florists never see these.

import Database from 'better-sqlite3';

export type StoreTroubleCode =
  | 'database-locked' // another process writes for longer than we wait
  | 'database-in-use' // another bot runs on it
  | 'lease-lost' // another bot took it over while this one slept
  | 'database-corrupt'
  | 'database-read-only'
  | 'database-newer'
  | 'database-older' // not brought to this schema yet
  | 'database-not-ours'
  | 'database-missing' // neither the file nor its folder can be opened
  | 'disk-full'
  | 'disk-failing'
  | 'entry-unreadable'
  | 'backup-unsound';

/** Thrown by everything in this folder; `message` is a full sentence without any message text in it. */
export class StoreTrouble extends Error {
  readonly code: StoreTroubleCode;

  constructor(code: StoreTroubleCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = 'StoreTrouble';
    this.code = code;
  }
}

/** What no waiting mends: this process must end. The rest may pass, so the work is tried again. */
const final: ReadonlySet<StoreTroubleCode> = new Set(['lease-lost', 'database-corrupt', 'database-newer', 'database-not-ours']);
export const isFinal = (trouble: StoreTrouble): boolean => final.has(trouble.code);

/** The database itself is in trouble, whatever the message was. One entry that cannot be read concerns its thread alone. */
export const isOutage = (error: unknown): boolean => error instanceof StoreTrouble && error.code !== 'entry-unreadable';

const known: readonly (readonly [prefix: string, code: StoreTroubleCode, sentence: (path: string) => string])[] = [
  ['SQLITE_BUSY', 'database-locked', (path) => `The database ${path} is locked by another program. Close that program and start again.`],
  ['SQLITE_LOCKED', 'database-locked', (path) => `The database ${path} is locked by another program. Close that program and start again.`],
  ['SQLITE_CORRUPT', 'database-corrupt', (path) => `The database ${path} is damaged. Stop the bot and restore the latest backup.`],
  [
    'SQLITE_NOTADB',
    'database-corrupt',
    (path) => `${path} is not a database, or is damaged. Check the path, or restore the latest backup.`,
  ],
  [
    'SQLITE_READONLY',
    'database-read-only',
    (path) => `The database ${path} cannot be written. Check the rights of the file and its folder.`,
  ],
  ['SQLITE_PERM', 'database-read-only', (path) => `The database ${path} cannot be written. Check the rights of the file and its folder.`],
  [
    'SQLITE_CANTOPEN',
    'database-missing',
    (path) => `The database ${path} cannot be opened. Check that its folder exists and can be written.`,
  ],
  ['SQLITE_FULL', 'disk-full', (path) => `The disk holding ${path} is full. Nothing was stored; make room and it will be tried again.`],
  ['SQLITE_IOERR', 'disk-failing', (path) => `The disk holding ${path} failed while reading or writing. Nothing was stored.`],
];

const fromFileSystem: readonly (readonly [code: string, sameAs: string])[] = [
  ['ENOENT', 'SQLITE_CANTOPEN'],
  ['ENOTDIR', 'SQLITE_CANTOPEN'],
  ['EISDIR', 'SQLITE_CANTOPEN'],
  ['EACCES', 'SQLITE_READONLY'],
  ['EPERM', 'SQLITE_READONLY'],
  ['EROFS', 'SQLITE_READONLY'],
  ['ENOSPC', 'SQLITE_FULL'],
];

const codeOf = (error: unknown): string => {
  if (error instanceof Database.SqliteError) return error.code;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return fromFileSystem.find(([name]) => name === code)?.[1] ?? '';
};

/** The trouble behind an error of SQLite or the file system; any other error is returned as it is. */
export const asStoreTrouble = (error: unknown, path: string): unknown => {
  const code = codeOf(error);
  const row = known.find(([prefix]) => code.startsWith(prefix));
  return row ? new StoreTrouble(row[1], row[2](path), error) : error;
};

/** Runs the work and names the trouble when the database fails under it. */
export const named = <T>(path: string, work: () => T): T => {
  try {
    return work();
  } catch (error) {
    throw asStoreTrouble(error, path);
  }
};
