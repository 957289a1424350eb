// Slack is told within its three seconds: of 200 messages in a burst, and though another program holds the store for two.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { slackWorkspaces } from '../../../src/hosts/slack/slack-workspaces.ts';
import { startSlack } from '../../../src/hosts/slack/start-slack.ts';
import { openStore } from '../../../src/store/sqlite-store.ts';
import { inGoodTime } from '../../support/in-good-time.ts';
import { message } from '../../support/slack-deliveries.ts';
import { memoryLog } from '../../support/slack-inbox.ts';
import { botToken, noRows, until } from '../../support/slack-running.ts';
import { startStandIn } from '../../support/slack-stand-in.ts';

/** Another program that takes the write lock, says so, and lets go two seconds later. */
const holdLock = (path: string): Promise<void> => {
  const script = `
    const db = require('better-sqlite3')(${JSON.stringify(path)});
    db.exec('BEGIN IMMEDIATE');
    process.stdout.write('held');
    setTimeout(() => { db.exec('ROLLBACK'); process.exit(0); }, 2000);`;
  const child = spawn(process.execPath, ['-e', script], { stdio: ['ignore', 'pipe', 'inherit'] });
  return new Promise((resolve, reject) => {
    child.stdout.once('data', () => resolve());
    child.once('exit', (code) => reject(new Error(`it ended with ${code} before it held the lock`)));
  });
};

test.each([
  ['200 messages at once', 200, false],
  ['60 messages while the store is held', 60, true],
] as const)('%s', async (_what, messages, held) => {
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
  const path = join(folder, 'studio.sqlite');
  const store = openStore({ path, busyMilliseconds: 50 });
  const slack = await startStandIn();
  const settings = { botToken, transport: { mode: 'socket', appToken: 'xapp-test-1' }, apiUrl: slack.apiUrl } as const;
  const { log } = memoryLog();
  const host = await startSlack({
    settings,
    workspaces: slackWorkspaces({ settings, log, now: Date.now }, noRows),
    inbox: { ...store, work: () => undefined },
    threads: { knowsThread: store.knows },
    log,
    now: Date.now,
  });
  try {
    if (held) await holdLock(path);
    const began = Date.now();
    for (let place = 0; place < messages; place += 1) {
      const ts = `1800000${String(place).padStart(3, '0')}.000100`;
      slack.send('events_api', message(`<@UBOT> ${place + 1} bouts`, { ts, thread_ts: '1800000000.000100' }));
    }
    await until(() => slack.acks.length === messages);
    inGoodTime(Date.now() - began, 3_000);
    expect(store.waiting().map(({ text }) => text)).toEqual(Array.from({ length: messages }, (_each, place) => `${place + 1} bouts`));
  } finally {
    await host.stop();
    await slack.close();
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
