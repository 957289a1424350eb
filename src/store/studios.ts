// What each studio knows. The settings file holds until someone chooses other settings in chat; from then on the stored ones hold.

import type { Database } from 'better-sqlite3';
import type { StoredStudio } from '../assistant/ports.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { StudioState } from '../studio/studio.ts';
import type { Entry } from '../thread/entry.ts';
import type { Folds } from './folds.ts';
import { recent } from './recent.ts';
import { type EntryRow, studioEntryColumns, toEntry } from './stored-entry.ts';

interface Row {
  readonly version: number;
  readonly settings: string;
  readonly state: string; // without the settings
}

const split = ({ settings, ...rest }: StudioState) => ({ settings: JSON.stringify(settings), state: JSON.stringify(rest) });
const joined = (row: Row): StudioState => ({ ...JSON.parse(row.state), settings: JSON.parse(row.settings) }) as StudioState;

export const studios = (db: Database, folds: Folds) => {
  const find = db.prepare<[string], Row>('SELECT version, settings, state FROM studios WHERE workspace = ?');
  // Without the state: a price list makes it long, and these are asked for every message.
  const findVersion = db.prepare<[string], { version: number }>('SELECT version FROM studios WHERE workspace = ?');
  const findSettings = db.prepare<[string], { settings: string; chosen: number }>(
    'SELECT settings, chosen FROM studios WHERE workspace = ?',
  );
  const known = recent<{ readonly row: Row; readonly state: StudioState }>();
  const findEntries = db.prepare<[string], EntryRow>(
    `SELECT ${studioEntryColumns} FROM entries WHERE workspace = ? AND scope = 'studio' ORDER BY seq`,
  );
  const first = db.prepare('INSERT INTO studios (workspace, settings, state, fold) VALUES (?, ?, ?, ?)');
  const follow = db.prepare('UPDATE studios SET settings = ? WHERE workspace = ? AND chosen = 0');
  const put = db.prepare(`
    UPDATE studios SET version = version + 1, settings = ?, chosen = chosen OR settings <> ?, state = ?, fold = ? WHERE workspace = ?`);

  return {
    versionOf: (workspace: string): number => findVersion.get(workspace)?.version ?? 0,

    /** True when `studio` must write before it can answer: a new workspace, or a changed settings file. */
    isStale: (workspace: string, initial: StudioSettings): boolean => {
      const row = findSettings.get(workspace);
      return !row || (row.chosen === 0 && row.settings !== JSON.stringify(initial));
    },

    follow: (workspace: string, initial: StudioSettings): void => {
      const { settings, state } = split(folds.studio(initial, []));
      if (findVersion.get(workspace)) follow.run(settings, workspace);
      else first.run(workspace, settings, state, folds.version);
    },

    studio: (workspace: string): StoredStudio | undefined => {
      const row = find.get(workspace);
      if (!row) return undefined;
      const before = known.get(workspace);
      // The same text is the same studio, so it is the same object too: what others keep about it stays good.
      const isSame = before?.row.settings === row.settings && before.row.state === row.state;
      const state = isSame ? before.state : joined(row);
      known.set(workspace, { row, state });
      return { workspace, version: row.version, state };
    },

    hasChosen: (workspace: string): boolean => findSettings.get(workspace)?.chosen === 1,

    entries: (workspace: string): readonly Entry[] => findEntries.all(workspace).map(toEntry),

    keep: (workspace: string, studio: StudioState): void => {
      const { settings, state } = split(studio);
      if (put.run(settings, settings, state, folds.version, workspace).changes === 0) {
        throw new Error('a studio was changed that was never read');
      }
    },
  };
};
