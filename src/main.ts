// Chooses the host and gives the process its exit code. Bolt is only loaded where Slack is used.

import { readSettings } from './settings.ts';

const read = readSettings(process.argv.slice(2), process.env);
if (!read.ok) {
  for (const trouble of read.troubles) process.stderr.write(`benchbell: ${trouble}\n`);
  process.exitCode = 2;
} else if (read.settings.host === 'slack') {
  const { runSlack } = await import('./run-slack.ts');
  process.exitCode = await runSlack(read.settings);
} else {
  const { runTerminal } = await import('./run-terminal.ts');
  process.exitCode = await runTerminal(read.settings);
}
