// Checks the Slack settings main read from the environment, and says in one sentence what is wrong with them. No token is ever repeated back.

import { readKey } from './seal.ts';
import { type SlackStartCode, type SlackStartProblem, startProblem } from './start-errors.ts';

export interface SlackSettings {
  readonly botToken: string; // xoxb-…; '' where workspaces install the app themselves
  readonly installs?: InstallSettings;
  /** Where deliveries come from. `appToken` is xapp-…, with connections:write. */
  readonly transport: { readonly mode: 'socket'; readonly appToken: string } | HttpTransport;
  /** Only for a stand-in on this machine, with made-up tokens. */
  readonly apiUrl?: string;
}

/** For workspaces that install the app themselves, over HTTP. */
export interface InstallSettings {
  readonly clientId: string;
  readonly clientSecret: string;
  readonly stateSecret: string; // signs the way through Slack's consent page
  readonly key: Buffer; // 32 bytes, for the tokens in the database
}

export interface HttpTransport {
  readonly mode: 'http';
  readonly signingSecret: string;
  readonly port: number; // 0 lets the system choose
}

export type SlackSettingsRead =
  | { readonly found: 'none' } // no Slack value at all: the terminal is meant
  | { readonly found: 'settings'; readonly settings: SlackSettings }
  | { readonly found: 'problem'; readonly problem: SlackStartProblem };

/** As the environment gives them; what is unset is undefined. */
export interface SlackValues {
  readonly botToken: string | undefined;
  readonly appToken: string | undefined;
  readonly signingSecret: string | undefined;
  readonly mode: 'socket' | 'http';
  readonly port: number;
  readonly apiUrl: string | undefined;
  readonly clientId?: string | undefined;
  readonly clientSecret?: string | undefined;
  readonly stateSecret?: string | undefined;
  readonly tokenKey?: string | undefined;
}

export const readSlackSettings = (values: SlackValues): SlackSettingsRead => {
  const [botToken, appToken, signingSecret] = [values.botToken, values.appToken, values.signingSecret].map(
    (value) => value?.trim() ?? '',
  ) as [string, string, string];
  if (values.clientId !== undefined) return readInstalls(values, botToken, signingSecret);
  if (botToken + appToken + signingSecret === '') return { found: 'none' };

  if (botToken.startsWith('xapp-') && appToken.startsWith('xoxb-')) return wrong('tokens-swapped');
  if (botToken === '') return wrong('bot-token-missing');
  if (botToken.startsWith('xapp-')) return wrong('bot-token-is-app-token');
  if (botToken.startsWith('xoxp-')) return wrong('bot-token-is-user-token');
  if (!botToken.startsWith('xoxb-')) return wrong('bot-token-malformed');

  const { apiUrl } = values;
  if (apiUrl !== undefined && !isStandIn(apiUrl, botToken)) return wrong('api-url-not-local');
  const standIn = apiUrl === undefined ? {} : { apiUrl: apiUrl.endsWith('/') ? apiUrl : `${apiUrl}/` };

  if (values.mode === 'socket') {
    if (appToken === '') return wrong('app-token-missing');
    if (appToken.startsWith('xoxb-')) return wrong('app-token-is-bot-token');
    if (!appToken.startsWith('xapp-')) return wrong('app-token-malformed');
    return { found: 'settings', settings: { botToken, transport: { mode: 'socket', appToken }, ...standIn } };
  }
  if (signingSecret === '') return wrong('signing-secret-missing');
  if (/^x(ox[a-z]|app)-/.test(signingSecret)) return wrong('signing-secret-is-token');
  return { found: 'settings', settings: { botToken, transport: { mode: 'http', signingSecret, port: values.port }, ...standIn } };
};

const wrong = (code: SlackStartCode): SlackSettingsRead => ({ found: 'problem', problem: startProblem(code) });

const readInstalls = (values: SlackValues, botToken: string, signingSecret: string): SlackSettingsRead => {
  const [clientId = '', clientSecret = '', stateSecret = ''] = [values.clientId, values.clientSecret, values.stateSecret].map((value) =>
    (value ?? '').trim(),
  );
  const { apiUrl } = values;
  if (botToken !== '') return wrong('installs-and-bot-token');
  if (values.mode !== 'http') return wrong('installs-need-http');
  if (signingSecret === '') return wrong('signing-secret-missing');
  if (clientSecret === '') return wrong('client-secret-missing');
  if (stateSecret.length < 16) return wrong('state-secret-short');
  const key = readKey((values.tokenKey ?? '').trim());
  if (key === undefined) return wrong('token-key-wrong');
  if (apiUrl !== undefined && !(isHere(apiUrl) && clientSecret.startsWith('test'))) return wrong('api-url-not-local');
  const settings: SlackSettings = {
    botToken: '',
    installs: { clientId, clientSecret, stateSecret, key },
    transport: { mode: 'http', signingSecret, port: values.port },
    ...(apiUrl === undefined ? {} : { apiUrl: apiUrl.endsWith('/') ? apiUrl : `${apiUrl}/` }),
  };
  return { found: 'settings', settings };
};

/** Real tokens must never reach a stand-in: only this machine, and only tokens marked as made up. */
const isStandIn = (url: string, botToken: string): boolean => isHere(url) && botToken.startsWith('xoxb-test');

const isHere = (url: string): boolean => URL.canParse(url) && ['127.0.0.1', 'localhost', '[::1]'].includes(new URL(url).hostname);
