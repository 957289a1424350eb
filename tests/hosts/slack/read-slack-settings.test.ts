// Slack's values from the environment: which mode they ask for, and what is wrong with them, no token repeated.

import { describe, expect, test } from 'vitest';
import { readSlackSettings, type SlackValues } from '../../../src/hosts/slack/read-slack-settings.ts';

const bot = 'xoxb-1-abc';
const app = 'xapp-1-abc';
const read = (values: Partial<SlackValues>) =>
  readSlackSettings({
    botToken: undefined,
    appToken: undefined,
    signingSecret: undefined,
    mode: 'socket',
    port: 3000,
    apiUrl: undefined,
    ...values,
  });
const problemOf = (values: Partial<SlackValues>) => {
  const found = read(values);
  return found.found === 'problem' ? found.problem : undefined;
};

test('no Slack value at all means the terminal', () => {
  expect(read({})).toEqual({ found: 'none' });
  expect(read({ botToken: ' ', port: 8080 })).toEqual({ found: 'none' });
});

test('Socket Mode unless HTTP is asked for', () => {
  expect(read({ botToken: bot, appToken: app })).toEqual({
    found: 'settings',
    settings: { botToken: bot, transport: { mode: 'socket', appToken: app } },
  });
  expect(read({ botToken: bot, mode: 'http', signingSecret: 's3', port: 8080 })).toEqual({
    found: 'settings',
    settings: { botToken: bot, transport: { mode: 'http', signingSecret: 's3', port: 8080 } },
  });
});

describe('what is wrong is named by its setting, and no token is repeated', () => {
  test.each<[string, Partial<SlackValues>]>([
    ['bot-token-missing', { appToken: app }],
    ['bot-token-is-app-token', { botToken: app, appToken: app }],
    ['bot-token-is-user-token', { botToken: 'xoxp-1-abc', appToken: app }],
    ['bot-token-malformed', { botToken: 'abc', appToken: app }],
    ['tokens-swapped', { botToken: app, appToken: bot }],
    ['app-token-missing', { botToken: bot }],
    ['app-token-is-bot-token', { botToken: bot, appToken: bot }],
    ['app-token-malformed', { botToken: bot, appToken: 'abc' }],
    ['signing-secret-missing', { botToken: bot, mode: 'http' }],
    ['signing-secret-is-token', { botToken: bot, mode: 'http', signingSecret: app }],
    ['api-url-not-local', { botToken: bot, appToken: app, apiUrl: 'http://127.0.0.1:4000/api/' }],
    ['api-url-not-local', { botToken: 'xoxb-test-1', appToken: app, apiUrl: 'https://slack.example.com/api/' }],
  ])('%s', (code, values) => {
    const problem = problemOf(values);
    expect(problem?.code).toBe(code);
    expect(problem?.sentence).toMatch(/SLACK_|BENCHBELL_/);
    expect(problem?.sentence).not.toContain('abc');
  });
});

test('a stand-in on this machine is allowed with made-up tokens', () => {
  const found = read({ botToken: 'xoxb-test-1', appToken: app, apiUrl: 'http://127.0.0.1:4000/api' });
  expect(found).toMatchObject({ found: 'settings', settings: { apiUrl: 'http://127.0.0.1:4000/api/' } });
});

describe('for workspaces that install the app themselves', () => {
  const installs = {
    mode: 'http' as const,
    signingSecret: 'made-up-signing-secret',
    clientId: '1.2',
    clientSecret: 'test-client-secret',
    stateSecret: 'a made-up state secret',
    tokenKey: 'ab'.repeat(32),
  };
  test('a client id is what asks for it', () => {
    expect(read(installs)).toMatchObject({
      found: 'settings',
      settings: { botToken: '', installs: { clientId: '1.2', key: Buffer.alloc(32, 0xab) } },
    });
  });
  test.each([
    ['a bot token as well', { botToken: 'xoxb-test-1' }, 'installs-and-bot-token'],
    ['Socket Mode', { mode: 'socket' as const }, 'installs-need-http'],
    ['no signing secret', { signingSecret: undefined }, 'signing-secret-missing'],
    ['no client secret', { clientSecret: undefined }, 'client-secret-missing'],
    ['a short state secret', { stateSecret: 'short' }, 'state-secret-short'],
    ['no key for the tokens', { tokenKey: undefined }, 'token-key-wrong'],
    ['a key of another length', { tokenKey: 'abcd' }, 'token-key-wrong'],
    ['another machine’s stand-in', { apiUrl: 'http://example.org/api/' }, 'api-url-not-local'],
    ['a real secret for a stand-in', { apiUrl: 'http://127.0.0.1:4000/api/', clientSecret: 'f00d' }, 'api-url-not-local'],
  ])('%s', (_what, more, code) => {
    expect(read({ ...installs, ...more })).toMatchObject({
      found: 'problem',
      problem: { code, sentence: expect.not.stringMatching(/test-client|abab|made-up-signing/) },
    });
  });
});
