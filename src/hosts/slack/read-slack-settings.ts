// Reads the Slack settings from named values (main passes the environment) and says in one sentence what is wrong with them. No token is ever repeated back.

import { type SlackStartProblem, startProblem } from './start-errors.ts';

export interface SlackSettings {
  readonly botToken: string; // xoxb-…
  /** Where deliveries come from. `appToken` is xapp-…, with connections:write. */
  readonly transport: { readonly mode: 'socket'; readonly appToken: string } | HttpTransport;
  /** Only for a stand-in on this machine, with made-up tokens. */
  readonly apiUrl?: string;
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

export type NamedValues = Readonly<Record<string, string | undefined>>;

const names = ['SLACK_BOT_TOKEN', 'SLACK_APP_TOKEN', 'SLACK_SIGNING_SECRET'] as const;

/** SLACK_BOT_TOKEN, SLACK_MODE (socket, the default, or http), SLACK_APP_TOKEN, SLACK_SIGNING_SECRET, SLACK_PORT (3000), SLACK_API_URL. */
export const readSlackSettings = (values: NamedValues): SlackSettingsRead => {
  const value = (name: string): string => values[name]?.trim() ?? '';
  if (names.every((name) => value(name) === '')) return { found: 'none' };
  const wrong = (problem: SlackStartProblem): SlackSettingsRead => ({ found: 'problem', problem });

  const botToken = value('SLACK_BOT_TOKEN');
  const appToken = value('SLACK_APP_TOKEN');
  if (botToken.startsWith('xapp-') && appToken.startsWith('xoxb-')) return wrong(startProblem('tokens-swapped'));
  if (botToken === '') return wrong(startProblem('bot-token-missing'));
  if (botToken.startsWith('xapp-')) return wrong(startProblem('bot-token-is-app-token'));
  if (botToken.startsWith('xoxp-')) return wrong(startProblem('bot-token-is-user-token'));
  if (!botToken.startsWith('xoxb-')) return wrong(startProblem('bot-token-malformed'));

  const apiUrl = value('SLACK_API_URL');
  if (apiUrl !== '' && !isStandIn(apiUrl, botToken)) return wrong(startProblem('api-url-not-local'));
  const standIn = apiUrl === '' ? {} : { apiUrl: apiUrl.endsWith('/') ? apiUrl : `${apiUrl}/` };

  const mode = value('SLACK_MODE').toLowerCase() || 'socket';
  if (mode === 'socket') {
    if (appToken === '') return wrong(startProblem('app-token-missing'));
    if (appToken.startsWith('xoxb-')) return wrong(startProblem('app-token-is-bot-token'));
    if (!appToken.startsWith('xapp-')) return wrong(startProblem('app-token-malformed'));
    return { found: 'settings', settings: { botToken, transport: { mode, appToken }, ...standIn } };
  }
  if (mode !== 'http') return wrong(startProblem('mode-unknown'));
  const signingSecret = value('SLACK_SIGNING_SECRET');
  if (signingSecret === '') return wrong(startProblem('signing-secret-missing'));
  if (/^x(oxb|oxp|app)-/.test(signingSecret)) return wrong(startProblem('signing-secret-is-token'));
  const port = value('SLACK_PORT') === '' ? 3000 : Number(value('SLACK_PORT'));
  if (!Number.isInteger(port) || port < 0 || port > 65_535) return wrong(startProblem('port-malformed'));
  return { found: 'settings', settings: { botToken, transport: { mode, signingSecret, port }, ...standIn } };
};

/** Real tokens must never reach a stand-in: only this machine, and only tokens marked as made up. */
const isStandIn = (url: string, botToken: string): boolean => {
  try {
    const { hostname } = new URL(url);
    return ['127.0.0.1', 'localhost', '[::1]'].includes(hostname) && botToken.startsWith('xoxb-test');
  } catch {
    return false;
  }
};
