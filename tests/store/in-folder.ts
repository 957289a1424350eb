// A folder of its own for each test, gone afterwards with every store opened in it.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { type OpenStore, type OpenStoreOptions, openStore } from '../../src/store/sqlite-store.ts';

export const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'loft-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

export const newPath = (): string => join(newFolder(), 'loft.db');

/** Opened for this test, without waiting for the disk: only a power cut could tell. */
export const open = (path: string, more: Partial<OpenStoreOptions> = {}): OpenStore => {
  const store = openStore({ path, powerSafe: false, ...more });
  onTestFinished(() => store.close());
  return store;
};
