// Disks that fill up or cannot be written, for one test: a small one of its own where this user may mount it, else the limits any user may set.

import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, closeSync, mkdtempSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Bot } from './bot-process.ts';

/** A disk of so many MiB in memory, gone with the test; undefined where mounting is not allowed. */
export const smallDisk = (mebibytes: number): string | undefined => {
  const folder = mkdtempSync(join(tmpdir(), 'small-disk-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${mebibytes}m`, 'tmpfs', folder]).status === 0;
  onTestFinished(() => {
    if (mounted) execFileSync('umount', ['--lazy', folder]);
    rmSync(folder, { recursive: true, force: true });
  });
  return mounted ? folder : undefined;
};

export interface FullDisk {
  fill(): void;
  makeRoom(): void;
}

/** The disk itself runs full, as other programs would fill it. */
export const fillDisk = (folder: string): FullDisk => {
  const filler = join(folder, 'photographs');
  return {
    fill: () => {
      const file = openSync(filler, 'w');
      try {
        for (const bytes = Buffer.alloc(4096, 1); writeSync(file, bytes) > 0; );
      } catch (error) {
        if (!(error instanceof Error && 'code' in error && error.code === 'ENOSPC')) throw error;
      } finally {
        closeSync(file);
      }
    },
    makeRoom: () => rmSync(filler),
  };
};

/** No file of this bot may grow. */
export const growNoMore = (bot: Bot, store: string): FullDisk => {
  const limit = (bytes: string) => execFileSync('prlimit', [`--pid=${bot.process.pid}`, `--fsize=${bytes}:unlimited`]);
  return { fill: () => void limit(String(statSync(`${store}-wal`).size)), makeRoom: () => void limit('unlimited') };
};

/** The folder can be read, not written, until it is given back: a disk mounted so, or taken rights for a user who is not above them. */
export const readOnly = (folder: string, isDisk: boolean, file: string): { giveBack(): void } => {
  const set = (writable: boolean): void => {
    if (isDisk) execFileSync('mount', ['-o', `remount,${writable ? 'rw' : 'ro'}`, folder]);
    else {
      chmodSync(file, writable ? 0o600 : 0o400);
      chmodSync(folder, writable ? 0o700 : 0o500);
    }
  };
  set(false);
  onTestFinished(() => set(true));
  return { giveBack: () => set(true) };
};
