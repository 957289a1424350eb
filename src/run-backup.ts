// npm run backup: a dated copy of the database, made while the bot works, read back before it counts, older ones thinned out by rule.

import { dirname, join } from 'node:path';
import { openBeside, readCommandLine, runCommand, say } from './command-line.ts';
import { storePath } from './settings.ts';
import { backUp } from './store/backup.ts';

const command = { name: 'backup', usage: '[--to FOLDER] [--store FILE]', options: ['to'] } as const;

await runCommand(async () => {
  const { store, options } = readCommandLine(command, process.argv.slice(2), storePath(process.env));
  const db = openBeside(store);
  try {
    const { path, bytes, removed } = await backUp(db, { directory: options.to ?? join(dirname(store), 'backups'), now: Date.now() });
    say(`Backed up to ${path} (${Math.ceil(bytes / 1024)} KiB) and read back without a fault.`);
    if (removed.length > 0) say(`Removed by rule: ${removed.join(', ')}`);
    return 0;
  } finally {
    db.close();
  }
});
