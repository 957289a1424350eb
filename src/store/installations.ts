// The workspaces that installed the app themselves. What is kept of each is sealed by the host before it comes here.

import type { OpenStore } from './sqlite-store.ts';

export interface InstallationRows {
  put(workspace: string, sealed: string, now: number): void;
  find(workspace: string): string | undefined;
  remove(workspace: string): void;
  all(): readonly string[];
}

export const installationRows = (store: OpenStore): InstallationRows => {
  const put = store.database.prepare('INSERT OR REPLACE INTO installations (workspace, sealed, installed_at) VALUES (?, ?, ?)');
  const find = store.database.prepare<[string], { sealed: string }>('SELECT sealed FROM installations WHERE workspace = ?');
  const remove = store.database.prepare('DELETE FROM installations WHERE workspace = ?');
  const all = store.database.prepare<[], { workspace: string }>('SELECT workspace FROM installations ORDER BY installed_at');
  return {
    put: (workspace, sealed, now) => void store.write(() => put.run(workspace, sealed, Math.trunc(now))),
    find: (workspace) => find.get(workspace)?.sealed,
    remove: (workspace) => void store.write(() => remove.run(workspace)),
    all: () => all.all().map((row) => row.workspace),
  };
};
