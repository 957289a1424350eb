// A stand-in, a folder and a bot for each test of the whole program, all gone afterwards.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished } from 'vitest';
import { type Bot, deliver, startBot } from './bot-process.ts';
import { type StandIn, startStandIn } from './slack-stand-in.ts';

export interface Place {
  readonly slack: StandIn;
  readonly folder: string;
  readonly store: string;
  /** Starts a bot on this store; rejects with its log when it ends instead. */
  start(env?: Readonly<Record<string, string>>): Promise<Bot>;
  /** The texts posted in a thread, oldest first. */
  answers(thread: string): readonly string[];
}

export const newPlace = async (mode: 'http' | 'socket' = 'http'): Promise<Place> => {
  const slack = await startStandIn();
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
  const bots: Bot[] = [];
  const store = join(folder, 'studio.sqlite');
  onTestFinished(async () => {
    await Promise.all(bots.map((bot) => bot.kill()));
    await slack.close();
    rmSync(folder, { recursive: true, force: true });
  });
  return {
    slack,
    folder,
    store,
    start: async (env = {}) => {
      const bot = await startBot({ mode, apiUrl: slack.apiUrl, store, env });
      bots.push(bot);
      return bot;
    },
    answers: (thread) => slack.messages.filter((one) => one.thread_ts === thread).map((one) => one.text),
  };
};

/** What a start that was refused has said, in one line and without a stack trace. */
export const refusedStart = async (place: Place, env: Readonly<Record<string, string>> = {}): Promise<string> => {
  const said = await place.start(env).then(
    () => 'it started',
    (error: unknown) => (error instanceof Error ? error.message : ''),
  );
  expect(said).toMatch(/^the bot ended with 2: /);
  expect(said).not.toMatch(/ {4}at |node_modules/);
  return said;
};

/** Sends as Slack does: again, with the same event id, until somebody says 200. */
export const sendUntilTaken = async (bot: () => Bot | undefined, body: object): Promise<void> => {
  for (const end = Date.now() + 600_000; Date.now() < end; ) {
    const port = bot()?.port;
    if (port !== undefined && (await deliver(port, body)) === 200) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('nobody took the delivery');
};

/** The log as objects. */
export const logOf = (bot: Bot): readonly Record<string, unknown>[] =>
  bot.lines.flatMap((line) => (line.startsWith('{') ? [JSON.parse(line) as Record<string, unknown>] : []));
