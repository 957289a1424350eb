// npm run restore: puts a backup in the place of the database. The bot must be stopped; what was there is set aside, never deleted.

import { readCommandLine, runCommand, say, UsageTrouble } from './command-line.ts';
import { storePath } from './settings.ts';
import { restore } from './store/restore.ts';

const command = { name: 'restore', usage: 'BACKUP [--store FILE]', options: [], operands: 1 } as const;

await runCommand(() => {
  const { store, operands } = readCommandLine(command, process.argv.slice(2), storePath(process.env));
  const [backup] = operands;
  if (backup === undefined) throw new UsageTrouble('Which backup? For example: npm run restore -- backups/benchbell-20270120T090000Z.db');
  const aside = restore({ backup, path: store, now: Date.now() });
  say(`Restored ${backup} to ${store}.`);
  if (aside !== undefined) say(`What was there before is kept as ${aside}.`);
  return 0;
});
