// The whole bot, as built, in a real process against a stand-in for Slack on this machine, so that it can be signed to, connected to and killed.

import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { postDelivery, signingSecret } from './slack-deliveries.ts';

export interface BotOptions {
  readonly mode: 'http' | 'socket';
  readonly apiUrl: string;
  readonly store: string;
  readonly env?: Readonly<Record<string, string>>; // besides the usual
  readonly script?: readonly string[]; // another program in its place
}

export interface Bot {
  readonly process: ChildProcess;
  readonly port: number | undefined;
  readonly lines: readonly string[]; // what it has logged
  /** Ends it as a power cut would. */
  kill(): Promise<void>;
  /** Asks it to stop; resolves with its exit code. */
  stop(): Promise<number | null>;
}

/** Resolves when it listens; rejects with what it logged when it ends instead. */
export const startBot = ({ mode, apiUrl, store, env = {}, script = ['dist/main.js'] }: BotOptions): Promise<Bot> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...script], {
      env: {
        PATH: process.env['PATH'],
        SLACK_BOT_TOKEN: 'xoxb-test-bot',
        SLACK_APP_TOKEN: 'xapp-test-app',
        SLACK_SIGNING_SECRET: signingSecret,
        BENCHBELL_MODE: mode,
        BENCHBELL_PORT: '0',
        BENCHBELL_SLACK_API: apiUrl,
        BENCHBELL_STORE: store,
        ...env,
      },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    const lines: string[] = [];
    const ended = new Promise<number | null>((done) => child.once('exit', (code) => done(code)));
    createInterface({ input: child.stderr }).on('line', (line) => {
      lines.push(line);
      if (!line.includes('"outcome":"listening"')) return;
      const { port } = JSON.parse(line) as { port?: number };
      resolve({
        process: child,
        port,
        lines,
        kill: async () => {
          child.kill('SIGKILL');
          await ended;
        },
        stop: () => {
          child.kill('SIGTERM');
          return ended;
        },
      });
    });
    void ended.then((code) => reject(new Error(`the bot ended with ${code}: ${lines.join('\n')}`)));
  });

/** Sends one delivery as Slack signs it. Resolves with the status, or undefined when nobody answered. */
export const deliver = (port: number, body: object): Promise<number | undefined> =>
  postDelivery(port, body).then(
    (response) => response.status,
    () => undefined,
  );

/** Waits until the check holds; fails after a minute, or the milliseconds given. */
export const until = async (check: () => boolean, what: string, within = 60_000): Promise<void> => {
  const end = Date.now() + within;
  while (!check()) {
    if (Date.now() > end) throw new Error(`waited too long for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
};
