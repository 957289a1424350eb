// Every reason the Slack host can refuse to start, with the sentence the operator reads. Sentences name the setting and where its value is found.

const sentences = {
  'bot-token-missing':
    'SLACK_BOT_TOKEN is missing. Copy the Bot User OAuth Token (it begins xoxb-) from your app’s “OAuth & Permissions” page.',
  'bot-token-is-app-token':
    'SLACK_BOT_TOKEN holds an app-level token (xapp-). It needs the Bot User OAuth Token, which begins xoxb-; the xapp- token belongs in SLACK_APP_TOKEN.',
  'bot-token-is-user-token': 'SLACK_BOT_TOKEN holds a person’s token (xoxp-). It needs the Bot User OAuth Token, which begins xoxb-.',
  'bot-token-malformed': 'SLACK_BOT_TOKEN does not look like a bot token: it should begin xoxb-.',
  'tokens-swapped': 'SLACK_BOT_TOKEN and SLACK_APP_TOKEN are the wrong way round: the bot token begins xoxb-, the app token xapp-.',
  'app-token-missing':
    'SLACK_APP_TOKEN is missing. Make an app-level token with connections:write on your app’s “Basic Information” page (it begins xapp-), or set BENCHBELL_MODE=http.',
  'app-token-is-bot-token':
    'SLACK_APP_TOKEN holds a bot token (xoxb-). It needs the app-level token, which begins xapp-; the xoxb- token belongs in SLACK_BOT_TOKEN.',
  'app-token-malformed': 'SLACK_APP_TOKEN does not look like an app-level token: it should begin xapp-.',
  'signing-secret-missing':
    'SLACK_SIGNING_SECRET is missing, and BENCHBELL_MODE=http needs it. Copy it from your app’s “Basic Information” page.',
  'signing-secret-is-token':
    'SLACK_SIGNING_SECRET holds a token. It needs the Signing Secret from your app’s “Basic Information” page: a row of letters and digits.',
  'port-in-use': 'BENCHBELL_PORT is in use by another program. Stop it, or choose another port.',
  'api-url-not-local': 'BENCHBELL_SLACK_API is for a stand-in on this machine with made-up tokens (xoxb-test…). Leave it out to use Slack.',
  'bot-token-refused':
    'Slack refuses SLACK_BOT_TOKEN. Was the app removed, or the token replaced? Reinstall the app and copy the Bot User OAuth Token again.',
  'bot-token-not-a-bot': 'SLACK_BOT_TOKEN is accepted but belongs to no bot. Copy the Bot User OAuth Token, not a person’s token.',
  'app-token-refused':
    'Slack refuses SLACK_APP_TOKEN. Make a new app-level token with connections:write on your app’s “Basic Information” page.',
  'app-token-lacks-scope': 'SLACK_APP_TOKEN lacks connections:write. Make a new app-level token with that scope.',
  'socket-mode-off': 'Socket Mode is off for this app. Switch it on under “Socket Mode”, or set BENCHBELL_MODE=http.',
  'installs-and-bot-token':
    'SLACK_CLIENT_ID and SLACK_BOT_TOKEN are both set. With the first, workspaces install the app themselves and bring their own tokens: leave SLACK_BOT_TOKEN out.',
  'installs-need-http':
    'SLACK_CLIENT_ID needs BENCHBELL_MODE=http: a workspace that installs the app is sent back to a web address of yours.',
  'client-secret-missing': 'SLACK_CLIENT_SECRET is missing. Copy it from your app’s “Basic Information” page.',
  'state-secret-short': 'SLACK_STATE_SECRET is missing or short. Make up at least 16 characters, for example with: openssl rand -hex 32',
  'token-key-wrong':
    'BENCHBELL_TOKEN_KEY must be 32 bytes as 64 hexadecimal digits or base64, for example from: openssl rand -hex 32. Keep it apart from backups of the database.',
  'slack-unreachable': 'Slack cannot be reached. Check this machine’s network.',
} as const;

export type SlackStartCode = keyof typeof sentences;

export interface SlackStartProblem {
  readonly code: SlackStartCode;
  readonly sentence: string;
}

export const startProblem = (code: SlackStartCode): SlackStartProblem => ({ code, sentence: sentences[code] });

/** Thrown by startSlack; its message is the operator's sentence and holds no token. */
export class SlackStartError extends Error {
  readonly code: SlackStartCode;
  constructor(code: SlackStartCode) {
    super(sentences[code]);
    this.name = 'SlackStartError';
    this.code = code;
  }
}
