// One bot per database: whoever writes holds a lease, renews it while it lives, and loses it by dying or by not renewing it.
// A dead holder on this machine is noticed at once; one on another machine when its lease runs out.

import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import type { Database } from 'better-sqlite3';
import { StoreTrouble } from './store-trouble.ts';

export interface Lease {
  /** Throws StoreTrouble 'lease-lost' when another process has taken over. Call it inside every writing transaction. */
  check(): void;
  renew(now: number): void; // where `check` has just passed
  release(): void;
}

interface Row {
  readonly holder: string;
  readonly host: string;
  readonly pid: number;
  readonly born: string;
  readonly renewed_at: number;
  readonly expires_at: number;
}

/** Milliseconds a lease lasts without being renewed. */
export const leaseLasts = 60_000;

/** Throws StoreTrouble 'database-in-use' with the holder's process and machine while another holds it. */
export const takeLease = (db: Database, path: string, now: number): Lease => {
  const holder = randomUUID();
  const find = db.prepare<[], Row>('SELECT holder, host, pid, born, renewed_at, expires_at FROM lease WHERE one = 1');
  const put = db.prepare('INSERT OR REPLACE INTO lease VALUES (1, ?, ?, ?, ?, ?, ?)');
  const renewRow = db.prepare('UPDATE lease SET renewed_at = ?, expires_at = ? WHERE one = 1 AND holder = ?');
  const releaseRow = db.prepare('DELETE FROM lease WHERE one = 1 AND holder = ?');

  db.transaction(() => {
    const row = find.get();
    if (row && isHeld(row, now)) throw new StoreTrouble('database-in-use', inUse(path, row));
    put.run(holder, hostname(), process.pid, bornAt(process.pid), now, now + leaseLasts);
  }).immediate();

  return {
    check: () => {
      if (find.get()?.holder !== holder)
        throw new StoreTrouble('lease-lost', `Another bot has taken over the database ${path}. Stop this one.`);
    },
    renew: (at) => void renewRow.run(at, at + leaseLasts, holder),
    release: () => void releaseRow.run(holder),
  };
};

const inUse = (path: string, row: Row): string =>
  `The database ${path} is in use by process ${row.pid} on ${row.host}. Stop that one first; if it has died, its hold ends at ${new Date(row.expires_at).toISOString()}.`;

const isHeld = (row: Row, now: number): boolean => {
  if (row.host === hostname()) return isAlive(row.pid, row.born);
  // A lease renewed in the future was written by a clock that has since been set back: it says nothing, so only its length counts.
  return row.expires_at > now && row.renewed_at <= now + leaseLasts;
};

const isAlive = (pid: number, born: string): boolean => {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EPERM')) return false;
  }
  const now = bornAt(pid);
  return born === '' || now === '' || born === now; // otherwise the number was given to another process
};

/** When a process started, as Linux counts it (field 22 of its stat file); '' where that cannot be known. */
const bornAt = (pid: number): string => {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
  } catch {
    return '';
  }
};
