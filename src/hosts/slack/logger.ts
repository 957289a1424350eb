// Lets Bolt and the Web API log through ours. Debug lines are dropped for good, because theirs hold message text and tickets;
// what else looks like a token, a socket ticket or a response address is blanked.

import type { Logger } from '@slack/bolt';
import { LogLevel } from '@slack/bolt';

/** The part of pino we use. */
export interface Log {
  info(fields: object, message: string): void;
  warn(fields: object, message: string): void;
  error(fields: object, message: string): void;
}

const secrets = [/x(?:ox[a-z]|app|oxe\.xox[bp])-[\w-]+/g, /wss?:\/\/\S+/g, /https?:\/\/hooks\.slack\.com\/\S+/g, /Bearer \S+/g];
const longest = 300;

/** A line safe to keep: no secrets, and short. */
export const withoutSecrets = (text: string): string =>
  secrets.reduce((line, secret) => line.replace(secret, '[hidden]'), text).slice(0, longest);

/** The code and name of an error, never its body: platform errors carry what was sent. */
export const errorName = (error: unknown): string => {
  if (!(error instanceof Error)) return 'unknown';
  const { code, data } = error as Error & { code?: unknown; data?: { error?: unknown } };
  if (typeof data?.error === 'string') return data.error;
  return typeof code === 'string' ? code : error.name;
};

export const slackLogger = (log: Log): Logger => {
  const line = (parts: readonly unknown[]): string =>
    withoutSecrets(parts.map((part) => (typeof part === 'string' ? part : errorName(part))).join(' '));
  return {
    debug: () => undefined,
    info: (...parts: unknown[]) => log.info({ from: 'slack' }, line(parts)),
    warn: (...parts: unknown[]) => log.warn({ from: 'slack' }, line(parts)),
    error: (...parts: unknown[]) => log.error({ from: 'slack' }, line(parts)),
    setLevel: () => undefined,
    getLevel: () => LogLevel.INFO,
    setName: () => undefined,
  };
};
