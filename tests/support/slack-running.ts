// The whole Slack host running against the stand-in, for tests: start it in either mode, deliver, and see what was kept and said.

import type { SealedRows } from '../../src/hosts/slack/installations.ts';
import { slackWorkspaces } from '../../src/hosts/slack/slack-workspaces.ts';
import { startSlack } from '../../src/hosts/slack/start-slack.ts';
import { postDelivery, signingSecret } from './slack-deliveries.ts';
import { memoryDesk } from './slack-desk.ts';
import { memoryInbox, memoryLog } from './slack-inbox.ts';
import { startStandIn } from './slack-stand-in.ts';

export const botToken = 'xoxb-test-1';
export type Mode = 'socket' | 'http';

export const until = async (what: () => boolean, within = 30_000): Promise<void> => {
  const end = Date.now() + within;
  while (!what()) {
    if (Date.now() > end) throw new Error('it did not happen in time');
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
};

/** A clock five times as fast, so that our patience with a busy store need not be waited out. */
export const hurried = (): (() => number) => {
  const began = Date.now();
  return () => began + 5 * (Date.now() - began);
};

/** What came back to Slack for one delivery: told or not, and the answer's body. */
export interface Told {
  readonly acked: boolean;
  readonly body?: unknown;
}

/** For a host with one workspace: nobody installs anything. */
export const noRows: SealedRows = { put: () => undefined, find: () => undefined, remove: () => undefined, all: () => [] };

export const runSlackHost = async (mode: Mode, now: () => number = Date.now, home = memoryDesk()) => {
  const slack = await startStandIn();
  const inbox = memoryInbox();
  const log = memoryLog();
  const transport = mode === 'socket' ? ({ mode, appToken: 'xapp-test-1' } as const) : ({ mode, signingSecret, port: 0 } as const);
  const settings = { botToken, transport, apiUrl: slack.apiUrl };
  const workspaces = slackWorkspaces({ settings, log: log.log, now }, noRows);
  const host = await startSlack({
    settings,
    workspaces,
    inbox: inbox.inbox,
    threads: inbox.threads,
    desk: home.desk,
    log: log.log,
    now,
  });

  /** Sends a delivery the way the mode does; `retry` is which try of Slack's it is. */
  const deliver = async (delivery: object, retry = 0): Promise<Told> => {
    if (mode === 'http') {
      const again: Record<string, string> =
        retry === 0 ? {} : { 'x-slack-retry-num': String(retry), 'x-slack-retry-reason': 'http_timeout' };
      const answer = await postDelivery(host.port ?? 0, delivery, again);
      const text = await answer.text();
      return { acked: answer.ok, ...(text === '' ? {} : { body: text.startsWith('{') ? JSON.parse(text) : text }) };
    }
    const type = 'event' in delivery ? 'events_api' : 'command' in delivery ? 'slash_commands' : 'interactive';
    const id = slack.send(type, delivery, { accepts_response_payload: true, retry_attempt: retry });
    const ack = () => slack.acks.find(({ envelope_id }) => envelope_id === id);
    await until(() => ack() !== undefined, 1_500).catch(() => undefined);
    const payload = ack()?.payload;
    return { acked: ack() !== undefined, ...(payload && Object.keys(payload).length > 0 ? { body: payload } : {}) };
  };

  const stop = async (): Promise<void> => {
    await host.stop();
    await slack.close();
  };
  return { slack, inbox, log, host, deliver, stop, ...home };
};

export type Running = Awaited<ReturnType<typeof runSlackHost>>;
