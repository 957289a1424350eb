// From a message in Slack to its reply there, on the real parts in one process: what goes wrong on the way to Slack never shows twice, nor gets lost.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createAssistant } from '../../../src/assistant/assistant.ts';
import { type OutboxPump, startOutboxPump } from '../../../src/clockwork/outbox-pump.ts';
import { createPoster } from '../../../src/hosts/slack/post.ts';
import { slackWorkspaces } from '../../../src/hosts/slack/slack-workspaces.ts';
import { type SlackHost, startSlack } from '../../../src/hosts/slack/start-slack.ts';
import { readStudioFile } from '../../../src/read-studio-file.ts';
import { type OpenStore, openStore } from '../../../src/store/sqlite-store.ts';
import { messageFaults } from '../../support/block-kit-limits.ts';
import { changed, mention, message, tap } from '../../support/slack-deliveries.ts';
import { memoryLog } from '../../support/slack-inbox.ts';
import { botToken, hurried, noRows, until } from '../../support/slack-running.ts';
import { type StandIn, type StandInMessage, startStandIn } from '../../support/slack-stand-in.ts';

const root = '1800000000.000100';
let slack: StandIn;
let store: OpenStore;
let pump: OutboxPump;
let host: SlackHost;
let clock: { now(): number };

beforeEach(async () => {
  slack = await startStandIn();
  store = openStore({ path: ':memory:' });
  const studio = readStudioFile(new URL('../../../demo-data/studio.json', import.meta.url));
  if (!studio.ok) throw new Error(studio.trouble);
  const { log } = memoryLog();
  const settings = { botToken, transport: { mode: 'socket', appToken: 'xapp-test-1' }, apiUrl: slack.apiUrl } as const;
  clock = { now: hurried() };
  const files = { make: () => ({ bytes: new TextEncoder().encode('a file'), type: 'text/plain' }) };
  const assistant = createAssistant({ store, clock, settings: studio.settings, onFailure: () => undefined });
  const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const workspaces = slackWorkspaces({ settings, log, now: clock.now }, noRows);
  pump = startOutboxPump({
    store,
    poster: createPoster({ workspaces, files, log }),
    clock,
    log: quiet,
    channelPause: 0,
    lookEvery: 50,
  });
  const work = (): void => {
    assistant.work();
    pump.wake();
  };
  const inbox = { ...store, work: () => void setImmediate(work) };
  const threads = { knowsThread: store.knows, isShared: store.isShared };
  host = await startSlack({ settings, workspaces, inbox, threads, log, now: clock.now });
});
afterEach(async () => {
  await host.stop();
  await pump.stop(1_000);
  await slack.close();
  store.close();
});

const replies = (): StandInMessage[] => slack.messages.filter(({ thread_ts }) => thread_ts === root);
const firstLines = (): (string | undefined)[] => replies().map(({ text }) => text.split('\n')[0]);
const answered = (count: number): Promise<void> => until(() => replies().length >= count);
/** Long enough for a second post to show, were there one. */
const aMoment = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 400));
const order = (text = '<@UBOT> 40 lapel pieces at 25 inc tax') => mention(text, { ts: root });
const said40 = /^40 buttonholes at £25\.00/;

test('a reply is one message in the thread, within Slack’s limits', async () => {
  slack.send('events_api', order());
  await answered(1);
  expect(firstLines()).toEqual([expect.stringMatching(said40)]);
  expect(replies().flatMap(messageFaults)).toEqual([]);
});

describe('on the way to Slack', () => {
  test.each([
    ['the answer is lost, though the reply arrived', { lost: 'answer' }],
    ['the call is lost', { lost: 'call' }],
    ['Slack’s machine fails', { status: 503 }],
    ['Slack says: too many, wait a second', { status: 429, headers: { 'retry-after': '1' } }],
    ['Slack’s own error', { error: 'internal_error' }],
  ] as const)('%s', async (_what, fault) => {
    slack.failNext('chat.postMessage', fault);
    slack.send('events_api', order());
    await answered(1);
    await until(() => store.unsent(clock.now() + 60_000).length === 0);
    await aMoment();
    expect(firstLines()).toEqual([expect.stringMatching(said40)]);
  });

  test('blocks that Slack refuses: the words go alone', async () => {
    slack.failNext('chat.postMessage', { error: 'msg_blocks_too_long' });
    slack.send('events_api', order());
    await answered(1);
    expect(replies()[0]?.blocks).toBeUndefined();
    expect(firstLines()).toEqual([expect.stringMatching(said40)]);
  });

  test('a revoked token: the reply waits and nothing ends', async () => {
    slack.failNext('chat.postMessage', { error: 'token_revoked' });
    slack.send('events_api', order());
    await until(() => slack.callsOf('chat.postMessage').length === 1);
    await aMoment();
    expect(replies()).toEqual([]);
    expect(store.unsent(clock.now() + 10 * 60_000)).toHaveLength(1);
    expect(host.healthy()).toBe(true);
  });

  test('a channel that is gone: given up', async () => {
    slack.failNext('chat.postMessage', { error: 'is_archived' });
    slack.send('events_api', order());
    await until(() => slack.callsOf('chat.postMessage').length === 1);
    await aMoment();
    expect(store.unsent(clock.now() + 24 * 3_600_000)).toEqual([]);
  });
});

test('an edit to other numbers changes the reply in place', async () => {
  slack.send('events_api', order());
  await answered(1);
  await until(() => store.unsent(clock.now() + 60_000).length === 0);
  const { ts } = replies()[0] ?? { ts: '' };
  slack.send('events_api', changed('<@UBOT> 40 lapel pieces at 25 inc tax', '<@UBOT> 12 lapel pieces at 25 inc tax', {}, { ts: root }));
  await until(() => /12 buttonholes/.test(replies()[0]?.text ?? ''));
  expect(replies().map((one) => one.ts)).toEqual([ts]);
  expect(replies().flatMap(messageFaults)).toEqual([]);
});

test('words typed to steer Slack come back inert', async () => {
  slack.send('events_api', order('<@UBOT> 40 lapel pieces at 25 inc tax <!channel> @here #general *99* &lt;!here&gt; \u202e'));
  await answered(1);
  const [reply] = replies();
  expect(replies().flatMap(messageFaults)).toEqual([]);
  expect(reply?.text).not.toMatch(/<|>/);
  expect(JSON.stringify(reply?.blocks)).not.toMatch(/mrkdwn|"broadcast"|"type":"user"/);
});

test('a choice counts once, however often it is tapped', async () => {
  slack.send('events_api', order('<@UBOT> 12 bouts 12 bucks'));
  await answered(1);
  interface Button {
    readonly action_id?: string;
    readonly value?: string;
  }
  const buttons = (replies()[0]?.blocks ?? []).flatMap((block) => (block as { elements?: Button[] }).elements ?? []);
  const choice = buttons.find(({ action_id }) => action_id?.startsWith('reply|choose|'));
  const tapped = () => tap(choice?.action_id ?? 'no button', { value: choice?.value });
  slack.send('interactive', tapped());
  slack.send('interactive', tapped());
  await answered(2);
  await aMoment();
  expect(replies()).toHaveLength(2);
  expect(replies().flatMap(messageFaults)).toEqual([]);
  expect(replies()[1]?.text).toContain('12 buttonholes');
});

test('small talk in the thread gets no reply', async () => {
  slack.send('events_api', order());
  await answered(1);
  slack.send('events_api', message('lovely, thanks!', { ts: '1800000040.000100', thread_ts: root }));
  await aMoment();
  expect(replies()).toHaveLength(1);
});
