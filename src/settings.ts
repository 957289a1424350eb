// The environment and the command line, read once. The only reader of process.env; every trouble names the setting, what is wrong with it, and an example.

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';

const port = 'must be a port number from 0 to 65535, for example BENCHBELL_PORT=3000';

const environment = z.object({
  SLACK_BOT_TOKEN: z.string().optional(),
  SLACK_APP_TOKEN: z.string().optional(),
  SLACK_SIGNING_SECRET: z.string().optional(),
  SLACK_CLIENT_ID: z.string().optional(), // with it, workspaces install the app themselves
  SLACK_CLIENT_SECRET: z.string().optional(),
  SLACK_STATE_SECRET: z.string().optional(),
  BENCHBELL_TOKEN_KEY: z.string().optional(),
  BENCHBELL_MODE: z.enum(['socket', 'http'], 'must be "socket" or "http", for example BENCHBELL_MODE=socket').default('socket'),
  BENCHBELL_PORT: z.coerce.number(port).int(port).min(0, port).max(65535, port).default(3000),
  BENCHBELL_STORE: z.string().default('benchbell.sqlite'),
  BENCHBELL_STUDIO: z.string().optional(),
  BENCHBELL_SLACK_API: z
    .url('must be a web address, for example BENCHBELL_SLACK_API=http://127.0.0.1:4000/api/') // a stand-in on this machine, for trials
    .optional(),
  BENCHBELL_LOG: z
    .enum(['debug', 'info', 'warn', 'error', 'silent'], 'must be one of debug, info, warn, error, silent, for example BENCHBELL_LOG=info')
    .default('info'),
});

/** These may come from a file instead: SLACK_BOT_TOKEN_FILE=/run/secrets/bot-token. */
const secrets = [
  'SLACK_BOT_TOKEN',
  'SLACK_APP_TOKEN',
  'SLACK_SIGNING_SECRET',
  'SLACK_CLIENT_SECRET',
  'SLACK_STATE_SECRET',
  'BENCHBELL_TOKEN_KEY',
] as const;

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
    readonly clientId: string | undefined;
    readonly clientSecret: string | undefined;
    readonly stateSecret: string | undefined;
    readonly tokenKey: string | undefined;
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

export type Environment = Readonly<Record<string, string | undefined>>;

/** Where the database is when the command line does not say. */
export const storePath = (env: Environment): string => env['BENCHBELL_STORE'] || 'benchbell.sqlite';

/** The environment with each secret that a file holds read from it; a trouble for each that cannot be. No value is ever repeated back. */
const withSecrets = (
  env: Environment,
  readFile: (path: string) => string,
): { readonly env: Environment; readonly troubles: readonly string[] } => {
  const given: Record<string, string | undefined> = { ...env };
  const troubles: string[] = [];
  for (const name of secrets) {
    const file = env[`${name}_FILE`];
    if (!file) continue;
    if (env[name]) {
      troubles.push(`${name} and ${name}_FILE are both set. Leave one of them out.`);
      continue;
    }
    try {
      given[name] = readFile(file).trim();
      if (given[name] === '') troubles.push(`${name}_FILE names an empty file. It must hold the value alone, for example xoxb-…`);
    } catch {
      troubles.push(`${name}_FILE names a file that cannot be read. For example ${name}_FILE=/run/secrets/${name.toLowerCase()}`);
    }
  }
  return { env: given, troubles };
};

/** Reads the arguments after the script name and the environment. An empty variable counts as unset. */
export const readSettings = (
  args: readonly string[],
  env: Environment,
  readFile: (path: string) => string = (path) => readFileSync(path, 'utf8'),
): SettingsRead => {
  let values: { talk?: boolean; json?: boolean; now?: string; store?: string; studio?: string; play?: string; files?: string };
  try {
    values = parseArgs({ args: [...args], options, strict: true, allowPositionals: false }).values;
  } catch (error) {
    const words = error instanceof Error ? error.message.split('.')[0]?.replace(/x(ox[a-z]|app)-[\w-]+/g, '[hidden]') : 'Not understood';
    return {
      ok: false,
      troubles: [
        `${words}. Known options: --talk, --json, --now 2027-01-20T09:00:00Z, --store FILE or :memory:, --studio FILE, --play FILE, --files FOLDER`,
      ],
    };
  }
  const whole = withSecrets(env, readFile);
  const given = environment.safeParse(Object.fromEntries(Object.entries(whole.env).filter(([, value]) => value !== '')));
  const troubles = [...whole.troubles];
  if (!given.success) troubles.push(...given.error.issues.map((issue) => `${String(issue.path[0])} ${issue.message}`));
  const now = values.now === undefined ? undefined : Date.parse(values.now);
  if (Number.isNaN(now)) troubles.push(`--now must be a date and time with a zone, for example --now 2027-01-20T09:00:00Z`);
  if (!given.success || troubles.length > 0) return { ok: false, troubles };
  const vars = given.data;
  const terminal =
    values.talk || values.json || values.play !== undefined || (!vars.SLACK_BOT_TOKEN && !vars.SLACK_APP_TOKEN && !vars.SLACK_CLIENT_ID);
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
        clientId: vars.SLACK_CLIENT_ID,
        clientSecret: vars.SLACK_CLIENT_SECRET,
        stateSecret: vars.SLACK_STATE_SECRET,
        tokenKey: vars.BENCHBELL_TOKEN_KEY,
        mode: vars.BENCHBELL_MODE,
        port: vars.BENCHBELL_PORT,
        apiUrl: vars.BENCHBELL_SLACK_API,
      },
      log: vars.BENCHBELL_LOG,
    },
  };
};
