// npm run check-store: proves the database, its indexes and every snapshot against the log. It changes nothing, and the bot may go on working.

import { openBeside, readCommandLine, runCommand, say } from './command-line.ts';
import { storePath } from './settings.ts';
import { checkStore } from './store/check-store.ts';
import { currentFolds } from './store/folds.ts';
import { checkSchema } from './store/migrate.ts';

const command = { name: 'check-store', usage: '[--store FILE]', options: [] } as const;

await runCommand(() => {
  const { store } = readCommandLine(command, process.argv.slice(2), storePath(process.env));
  const db = openBeside(store);
  try {
    checkSchema(db, store, currentFolds.version);
    // One transaction, so that a message handled meanwhile is seen whole or not at all.
    const { faults, ...counts } = db.transaction(() => checkStore(db, currentFolds))();
    const { threads, entries, waitingMessages, waitingReplies } = counts;
    say(`${threads} threads, ${entries} entries; waiting: ${waitingMessages} messages, ${waitingReplies} replies.`);
    for (const fault of faults) say(`Fault: ${fault}`);
    say(faults.length === 0 ? 'No fault found.' : `${faults.length} faults found. Stop the bot and restore the latest backup.`);
    return faults.length === 0 ? 0 : 1;
  } finally {
    db.close();
  }
});
