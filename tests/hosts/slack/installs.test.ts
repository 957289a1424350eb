// Several workspaces, each of which installed the app itself: through Slack's consent page and back, by the real Bolt receiver.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { SlackSettings } from '../../../src/hosts/slack/read-slack-settings.ts';
import { type AtWork, startAtWork } from '../../support/slack-at-work.ts';
import { eventCallback, mention, postDelivery, signingSecret } from '../../support/slack-deliveries.ts';
import { until } from '../../support/slack-running.ts';
import { type StandIn, startStandIn } from '../../support/slack-stand-in.ts';

const key = Buffer.alloc(32, 7);
const settings = (apiUrl: string): SlackSettings => ({
  botToken: '',
  installs: { clientId: '1.2', clientSecret: 'test-client-secret', stateSecret: 'a made-up state secret', key },
  transport: { mode: 'http', signingSecret, port: 0 },
  apiUrl,
});

let slack: StandIn;
let at: AtWork;
beforeEach(async () => {
  slack = await startStandIn();
  slack.workspaces.set('xoxb-test-T1', { team_id: 'T1', user_id: 'UBOT', bot_id: 'BBOT', url: 'https://net-loft.slack.com/' });
  slack.workspaces.set('xoxb-test-T2', { team_id: 'T2', user_id: 'UBOT2', bot_id: 'BBOT2', url: 'https://rope-walk.slack.com/' });
  at = await startAtWork({ slack, settings });
});
afterEach(async () => {
  await at.stop();
  await slack.close();
});

const page = (path: string, headers: Record<string, string> = {}) =>
  fetch(`http://127.0.0.1:${at.host.port}${path}`, { redirect: 'manual', headers });

/** What a person's browser does: our page, Slack's consent, and back with a code. */
const install = async (team: string): Promise<Response> => {
  const begun = await page('/slack/install');
  const consent = new URL(begun.headers.get('location') ?? 'none:');
  const state = consent.searchParams.get('state') ?? '';
  const cookie = (begun.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
  return page(`/slack/oauth_redirect?code=${team}&state=${encodeURIComponent(state)}`, { cookie });
};
const deliver = (delivery: object) => postDelivery(at.host.port ?? 0, delivery);
const inTeam = (team: string, delivery: object) => ({
  ...delivery,
  team_id: team,
  authorizations: [{ team_id: team, user_id: 'U', is_bot: true }],
});
const order = (team: string, bot: string, ts: string) => inTeam(team, mention(`<@${bot}> 40 lapel pieces at 25 inc tax`, { ts, team }));
const posts = () => slack.callsOf('chat.postMessage').map(({ token, args }) => [token, args['thread_ts']]);

test('the consent page is asked for our scopes', async () => {
  const consent = new URL((await page('/slack/install')).headers.get('location') ?? 'none:');
  expect([consent.hostname, consent.searchParams.get('client_id')]).toEqual(['slack.com', '1.2']);
  expect(consent.searchParams.get('scope')?.split(',')).toContain('channels:history');
});

test('each workspace is answered with its own token, and none sees another’s events', async () => {
  for (const team of ['T1', 'T2']) expect((await install(team)).status).toBe(200);
  expect((await deliver(order('T1', 'UBOT', '1800000000.000100'))).status).toBe(200);
  expect((await deliver(order('T2', 'UBOT2', '1800000000.000200'))).status).toBe(200);
  await until(() => posts().length === 2);
  expect(posts().sort()).toEqual([
    ['xoxb-test-T1', '1800000000.000100'],
    ['xoxb-test-T2', '1800000000.000200'],
  ]);
  expect(at.store.openEvents('T1', '2027-01-01' as never).map(({ key: { thread } }) => thread)).toEqual(['1800000000.000100']);
});

test('tokens are not readable in the database, nor in the log', async () => {
  await install('T1');
  const rows = at.store.database.prepare('SELECT * FROM installations').all();
  expect(rows).toHaveLength(1);
  expect(JSON.stringify(rows)).not.toMatch(/xoxb|net-loft/);
  expect(at.lines.join('\n')).not.toMatch(/xoxb|client-secret|state secret/);
});

test('a state that was not ours, or another browser’s, installs nothing', async () => {
  const begun = await page('/slack/install');
  const state = new URL(begun.headers.get('location') ?? 'none:').searchParams.get('state') ?? '';
  const cookie = (begun.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
  await page('/slack/oauth_redirect?code=T1&state=forged', { cookie });
  await page(`/slack/oauth_redirect?code=T1&state=${encodeURIComponent(state)}`);
  expect(at.rows.all()).toEqual([]);
});

test('a workspace that has not installed the app is not served', async () => {
  await deliver(order('T9', 'UBOT', '1800000000.000900'));
  expect(at.store.waiting()).toEqual([]);
  expect(at.store.knows({ workspace: 'T9', channel: 'C1', thread: '1800000000.000900' })).toBe(false);
});

describe('removed', () => {
  test.each([
    ['the app', { type: 'app_uninstalled' }],
    ['its token', { type: 'tokens_revoked', tokens: { bot: ['UBOT'] } }],
  ])('%s: the installation goes, and replies wait for a new one', async (_what, event) => {
    await install('T1');
    slack.failNext('chat.postMessage', { error: 'internal_error' });
    await deliver(order('T1', 'UBOT', '1800000000.000100'));
    await until(() => posts().length === 1);
    expect((await deliver(inTeam('T1', eventCallback(event)))).status).toBe(200);
    await until(() => at.rows.all().length === 0);
    expect(at.lines.join('\n')).toContain('removed from a workspace');
    expect(at.store.unsent(Date.now() + 10 ** 12)).toHaveLength(1);
    await install('T1');
    await until(() => slack.messages.length === 1);
  });
  test('a person’s token only: nothing goes', async () => {
    await install('T1');
    await deliver(inTeam('T1', eventCallback({ type: 'tokens_revoked', tokens: { oauth: ['UAILSA'] } })));
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(at.rows.all()).toEqual(['T1']);
  });
});
