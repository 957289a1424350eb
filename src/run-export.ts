// npm run export: everything kept of one thread or one workspace as JSON, from a private copy, so that the bot may go on working.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openBeside, readCommandLine, runCommand, say, UsageTrouble } from './command-line.ts';
import { storePath } from './settings.ts';
import { exportThread, exportWorkspace, workspaces } from './store/export.ts';
import { settleCopy } from './store/sound-copy.ts';
import { type OpenStore, openStore } from './store/sqlite-store.ts';

const command = {
  name: 'export',
  usage: '[--workspace ID] [--channel ID --thread TS] [--out FILE] [--store FILE]',
  options: ['workspace', 'channel', 'thread', 'out'],
} as const;

/** The one there is, when none is named. */
const workspaceOf = (store: OpenStore, named: string | undefined): string => {
  const all = workspaces(store.database);
  const [only] = all;
  if (named === undefined && all.length === 1 && only !== undefined) return only;
  if (named !== undefined && all.includes(named)) return named;
  const list = all.length === 0 ? 'The database holds none yet' : `It holds: ${all.join(', ')}`;
  throw new UsageTrouble(`${named === undefined ? 'Which workspace?' : `There is no workspace ${named}.`} ${list}.`);
};

await runCommand(async () => {
  const { store, options } = readCommandLine(command, process.argv.slice(2), storePath(process.env));
  const { channel, thread, out } = options;
  if ((channel === undefined) !== (thread === undefined)) throw new UsageTrouble('A thread needs both --channel and --thread.');
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-export-'));
  try {
    const copy = join(folder, 'copy.db');
    const db = openBeside(store);
    await db.backup(copy).finally(() => db.close());
    settleCopy(copy);
    const opened = openStore({ path: copy });
    try {
      const workspace = workspaceOf(opened, options.workspace);
      const all =
        thread === undefined ? exportWorkspace(opened, workspace) : exportThread(opened, { workspace, channel: channel ?? '', thread });
      const json = JSON.stringify(all, null, 2);
      if (out === undefined) say(json);
      else writeFileSync(out, `${json}\n`, { mode: 0o600 });
    } finally {
      opened.close();
    }
    return 0;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
