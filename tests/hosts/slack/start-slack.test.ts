// A start that cannot succeed says why, in a sentence that holds no token.

import { afterEach, beforeEach, expect, test } from 'vitest';
import { slackWorkspaces } from '../../../src/hosts/slack/slack-workspaces.ts';
import { type SlackHost, startSlack } from '../../../src/hosts/slack/start-slack.ts';
import { signingSecret } from '../../support/slack-deliveries.ts';
import { memoryInbox, memoryLog } from '../../support/slack-inbox.ts';
import { botToken, noRows } from '../../support/slack-running.ts';
import { type StandIn, startStandIn } from '../../support/slack-stand-in.ts';

let slack: StandIn;
beforeEach(async () => {
  slack = await startStandIn();
});
afterEach(() => slack.close());

type Transport =
  | { readonly mode: 'socket'; readonly appToken: string }
  | { readonly mode: 'http'; readonly signingSecret: string; readonly port: number };
const start = (transport: Transport): Promise<SlackHost> => {
  const { inbox, threads } = memoryInbox();
  const settings = { botToken, transport, apiUrl: slack.apiUrl };
  const { log } = memoryLog();
  const workspaces = slackWorkspaces({ settings, log, now: Date.now }, noRows);
  return startSlack({ settings, workspaces, inbox, threads, log, now: Date.now });
};

test.each([
  ['auth.test', { error: 'invalid_auth' }, 'bot-token-refused'],
  ['auth.test', { error: 'token_revoked' }, 'bot-token-refused'],
  ['auth.test', { status: 503 }, 'slack-unreachable'],
  ['apps.connections.open', { error: 'invalid_auth' }, 'app-token-refused'],
  ['apps.connections.open', { error: 'missing_scope' }, 'app-token-lacks-scope'],
  ['apps.connections.open', { lost: 'call' }, 'slack-unreachable'],
] as const)('%s %o', async (method, fault, code) => {
  slack.failNext(method, fault);
  const refused = start({ mode: 'socket', appToken: 'xapp-test-1' });
  await expect(refused).rejects.toMatchObject({ code, message: expect.not.stringMatching(/xoxb-test|xapp-test/) });
});

test('the port is taken', async () => {
  const first = await start({ mode: 'http', signingSecret, port: 0 });
  await expect(start({ mode: 'http', signingSecret, port: first.port ?? 0 })).rejects.toMatchObject({ code: 'port-in-use' });
  await first.stop();
});
