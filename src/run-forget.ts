// npm run forget: deletes one thread for good. The bot must be stopped; backups made before still hold the thread.

import { mustExist, readCommandLine, runCommand, say, UsageTrouble } from './command-line.ts';
import { storePath } from './settings.ts';
import { workspaces } from './store/export.ts';
import { forget } from './store/forget.ts';
import { openStore } from './store/sqlite-store.ts';

const command = {
  name: 'forget',
  usage: '--channel ID --thread TS [--workspace ID] [--store FILE]',
  options: ['workspace', 'channel', 'thread'],
} as const;

await runCommand(() => {
  const { store: path, options } = readCommandLine(command, process.argv.slice(2), storePath(process.env));
  const { channel, thread } = options;
  if (channel === undefined || thread === undefined)
    throw new UsageTrouble('Which thread? For example: npm run forget -- --channel C1 --thread 1800000000.000100');
  mustExist(path);
  const store = openStore({ path });
  try {
    const all = workspaces(store.database);
    const workspace = options.workspace ?? (all.length === 1 ? all[0] : undefined);
    if (workspace === undefined) throw new UsageTrouble(`Which workspace? It holds: ${all.join(', ') || 'none'}.`);
    const { entries, messages, replies, keptForStudio } = forget(store, { workspace, channel, thread });
    const kept = keptForStudio > 0 ? ` ${keptForStudio} entries about prices and crew stay with the studio, without who said them.` : '';
    say(`Forgotten: ${entries} entries, ${messages} messages, ${replies} replies.${kept}`);
    if (entries + messages + replies + keptForStudio === 0) say('There was nothing of that thread. Check the channel and the thread.');
    return entries + messages + replies + keptForStudio === 0 ? 1 : 0;
  } finally {
    store.close();
  }
});
