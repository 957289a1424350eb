// The manifests ask for what the code uses, and nothing else. Scopes of each method and event: docs.slack.dev/reference, read 2026-09.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { botScopes } from '../../src/hosts/slack/bot-scopes.ts';

const root = new URL('../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');

interface Manifest {
  readonly display_information: { readonly name: string; readonly description: string; readonly long_description: string };
  readonly features: {
    readonly agent_view: { readonly agent_description: string; readonly suggested_prompts: readonly { title: string; message: string }[] };
    readonly slash_commands: readonly { readonly command: string; readonly url?: string }[];
    readonly shortcuts: readonly {
      readonly name: string;
      readonly callback_id: string;
      readonly description: string;
      readonly type: string;
    }[];
    readonly app_home: Readonly<Record<string, boolean>>;
  };
  readonly oauth_config: {
    readonly redirect_urls?: readonly string[];
    readonly scopes: { readonly bot: readonly string[]; readonly user?: readonly string[] };
  };
  readonly settings: {
    readonly event_subscriptions: { readonly bot_events: readonly string[]; readonly request_url?: string };
    readonly interactivity: { readonly is_enabled: boolean; readonly request_url?: string };
    readonly socket_mode_enabled: boolean;
    readonly token_rotation_enabled: boolean;
  };
}

const socket = JSON.parse(read('manifests/slack-app.socket.json')) as Manifest;
const http = JSON.parse(read('manifests/slack-app.http.json')) as Manifest;

const folder = 'src/hosts/slack/';
const code = readdirSync(new URL(folder, root))
  .filter((name) => name.endsWith('.ts'))
  .map((name) => read(folder + name))
  .join('\n');

const scopesOfMethod: Record<string, readonly string[]> = {
  'auth.test': [],
  'chat.postMessage': ['chat:write'],
  'chat.update': ['chat:write'],
  'conversations.replies': ['channels:history', 'groups:history', 'im:history', 'mpim:history'],
  // For a channel whose messages never told whether it is shared with another organisation; im and mpim are never asked about.
  'conversations.info': ['channels:read', 'groups:read'],
  'conversations.history': ['channels:history', 'groups:history', 'im:history', 'mpim:history'],
  'files.getUploadURLExternal': ['files:write'],
  'files.completeUploadExternal': ['files:write'],
  'users.info': ['users:read'],
  'views.open': [],
  'views.publish': [],
  'views.update': [],
};
const scopesOfEvent: Record<string, readonly string[]> = {
  app_home_opened: [],
  app_mention: ['app_mentions:read'],
  app_uninstalled: [],
  tokens_revoked: [],
  'message.channels': ['channels:history'],
  'message.groups': ['groups:history'],
  'message.im': ['im:history'],
  'message.mpim': ['mpim:history'],
};

const matches = (pattern: RegExp): string[] => [...code.matchAll(pattern)].map((match) => match[1] ?? '');
const methodsUsed = new Set([
  ...matches(/client\s*\.((?:auth|chat|conversations|files|users|views)\.\w+)\(/g),
  ...matches(/apiCall\('([\w.]+)'/g),
]);

test('every method we call is known, with its scope', () => {
  expect(methodsUsed.size).toBeGreaterThan(5);
  expect([...methodsUsed].filter((method) => !(method in scopesOfMethod))).toEqual([]);
});

test('every scope asked for is used, and every scope used is asked for', () => {
  const { features, settings, oauth_config } = socket;
  const used = new Set([
    ...[...methodsUsed].flatMap((method) => scopesOfMethod[method] ?? []),
    ...settings.event_subscriptions.bot_events.flatMap((event) => scopesOfEvent[event] ?? [`unknown event ${event}`]),
    ...(features.slash_commands.length + features.shortcuts.length > 0 ? ['commands'] : []),
    ...('agent_view' in features ? ['assistant:write'] : []),
    ...(code.includes('url_private_download') ? ['files:read'] : []),
  ]);
  expect([...oauth_config.scopes.bot].sort()).toEqual([...used].sort());
  expect([...botScopes]).toEqual(oauth_config.scopes.bot); // asked of workspaces that install the app themselves
  expect(oauth_config.scopes.user).toBeUndefined();
});

test('every event asked for is handled', () => {
  const handled = (event: string): boolean => code.includes(`'${event.split('.')[0]}'`);
  expect(socket.settings.event_subscriptions.bot_events.filter((event) => !handled(event))).toEqual([]);
  expect(
    matches(/app\.event\('(\w+)'/g).filter(
      (event) => !socket.settings.event_subscriptions.bot_events.some((asked) => asked.split('.')[0] === event),
    ),
  ).toEqual([]);
});

test('commands and shortcuts are the ones the code listens to', () => {
  expect(socket.features.slash_commands.map(({ command }) => command)).toEqual([...new Set(matches(/'(\/benchbell)'/g))]);
  for (const { callback_id } of socket.features.shortcuts) expect(code).toContain(`'${callback_id}'`);
});

test('the two differ only in how deliveries arrive', () => {
  const url = http.settings.event_subscriptions.request_url;
  expect(url).toMatch(/\/slack\/events$/);
  expect(http.settings.interactivity.request_url).toBe(url);
  expect(http.features.slash_commands[0]?.url).toBe(url);
  expect(http.oauth_config.redirect_urls).toEqual([url?.replace('/events', '/oauth_redirect')]);
  expect([socket.settings.socket_mode_enabled, http.settings.socket_mode_enabled]).toEqual([true, false]);
  const same = (manifest: Manifest) =>
    JSON.parse(
      JSON.stringify(manifest, (key, value) => (/^(request_|redirect_)?urls?$|^socket_mode_enabled$/.test(key) ? undefined : value)),
    );
  expect(same(http)).toEqual(same(socket));
});

test('holds Slack’s limits for names and words, and leaves token rotation off', () => {
  const { display_information: shown, features, settings } = socket;
  expect(shown.name.length).toBeLessThanOrEqual(35);
  expect(shown.description.length).toBeLessThanOrEqual(140);
  expect(shown.long_description.length).toBeGreaterThanOrEqual(175);
  expect(features.agent_view.agent_description.length).toBeLessThanOrEqual(300);
  expect(features.agent_view.suggested_prompts.length).toBeLessThanOrEqual(4);
  for (const { name, description } of features.shortcuts) {
    expect(name.length).toBeLessThanOrEqual(24);
    expect(description.length).toBeLessThanOrEqual(150);
  }
  expect(features.app_home).toEqual({ home_tab_enabled: true, messages_tab_enabled: true, messages_tab_read_only_enabled: false });
  expect(settings.token_rotation_enabled).toBe(false);
});
