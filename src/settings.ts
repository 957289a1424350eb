// The environment and the command line, read once. The only reader of process.env; every trouble names the setting, what is wrong with it, and an example.

import { parseArgs } from 'node:util';
import { z } from 'zod';

const environment = z.object({
  SLACK_BOT_TOKEN: z.string().optional(),
  SLACK_APP_TOKEN: z.string().optional(),
  SLACK_SIGNING_SECRET: z.string().optional(),
  BENCHBELL_MODE: z.enum(['socket', 'http'], 'must be "socket" or "http", for example BENCHBELL_MODE=socket').default('socket'),
  BENCHBELL_PORT: z.coerce.number('must be a port number, for example BENCHBELL_PORT=3000').int().min(0).max(65535).default(3000),
  BENCHBELL_STORE: z.string().min(1, 'must be a file path, for example BENCHBELL_STORE=benchbell.sqlite').default('benchbell.sqlite'),
  BENCHBELL_STUDIO: z.string().min(1, 'must be a file path, for example BENCHBELL_STUDIO=studio.json').optional(),
  BENCHBELL_SLACK_API: z.url('must be a web address, for example http://127.0.0.1:4000/api/').optional(), // a stand-in on this machine, for trials
  BENCHBELL_LOG: z.enum(['debug', 'info', 'warn', 'error', 'silent'], 'must be one of debug, info, warn, error, silent').default('info'),
});

export interface Settings {
  readonly host: 'slack' | 'terminal';
  readonly json: boolean;
  readonly now: number | undefined; // epoch milliseconds; undefined = the real clock
  readonly store: string;
  readonly studioFile: string | undefined;
  readonly play: string | undefined; // a conversation file instead of the keyboard
  readonly files: string | undefined; // the folder where the terminal saves calendars and lists
  readonly slack: {
    readonly botToken: string | undefined;
    readonly appToken: string | undefined;
    readonly signingSecret: string | undefined;
    readonly mode: 'socket' | 'http';
    readonly port: number;
    readonly apiUrl: string | undefined;
  };
  readonly log: 'debug' | 'info' | 'warn' | 'error' | 'silent';
}

export type SettingsRead =
  | { readonly ok: true; readonly settings: Settings }
  | { readonly ok: false; readonly troubles: readonly string[] };

const options = {
  talk: { type: 'boolean', default: false },
  json: { type: 'boolean', default: false },
  now: { type: 'string' },
  store: { type: 'string' },
  studio: { type: 'string' },
  play: { type: 'string' },
  files: { type: 'string' },
} as const;

/** Reads the arguments after the script name and the environment. An empty variable counts as unset. */
export const readSettings = (args: readonly string[], env: Readonly<Record<string, string | undefined>>): SettingsRead => {
  let values: { talk?: boolean; json?: boolean; now?: string; store?: string; studio?: string; play?: string; files?: string };
  try {
    values = parseArgs({ args: [...args], options, strict: true, allowPositionals: false }).values;
  } catch (error) {
    const words = error instanceof Error ? error.message.split('.')[0] : 'not understood';
    return {
      ok: false,
      troubles: [
        `${words}. Known options: --talk, --json, --now 2027-01-20T09:00:00Z, --store FILE or :memory:, --studio FILE, --play FILE, --files FOLDER`,
      ],
    };
  }
  const given = environment.safeParse(Object.fromEntries(Object.entries(env).filter(([, value]) => value !== '')));
  const troubles = given.success ? [] : given.error.issues.map((issue) => `${String(issue.path[0])} ${issue.message}`);
  const now = values.now === undefined ? undefined : Date.parse(values.now);
  if (Number.isNaN(now)) troubles.push(`--now must be a date and time with a zone, for example --now 2027-01-20T09:00:00Z`);
  if (!given.success || troubles.length > 0) return { ok: false, troubles };
  const vars = given.data;
  const terminal = values.talk || values.json || values.play !== undefined || (!vars.SLACK_BOT_TOKEN && !vars.SLACK_APP_TOKEN);
  return {
    ok: true,
    settings: {
      host: terminal ? 'terminal' : 'slack',
      json: values.json ?? false,
      now,
      store: values.store ?? (terminal ? ':memory:' : vars.BENCHBELL_STORE),
      studioFile: values.studio ?? vars.BENCHBELL_STUDIO,
      play: values.play,
      files: values.files,
      slack: {
        botToken: vars.SLACK_BOT_TOKEN,
        appToken: vars.SLACK_APP_TOKEN,
        signingSecret: vars.SLACK_SIGNING_SECRET,
        mode: vars.BENCHBELL_MODE,
        port: vars.BENCHBELL_PORT,
        apiUrl: vars.BENCHBELL_SLACK_API,
      },
      log: vars.BENCHBELL_LOG,
    },
  };
};
