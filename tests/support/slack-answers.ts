// Slack's Web API with scripted answers, by nock, and a poster that talks to it. Import this before anything makes a client: a client keeps the fetch it finds.

import nock from 'nock';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import type { FileMaker, Poster, QueuedReply } from '../../src/assistant/ports.ts';
import type { Log } from '../../src/hosts/slack/logger.ts';
import { createPoster } from '../../src/hosts/slack/post.ts';
import { type Workspaces, workspaceOf } from '../../src/hosts/slack/workspaces.ts';
import type { Block } from '../../src/reply/reply.ts';
import { memoryLog } from './slack-inbox.ts';

type Args = Record<string, string>;
type Answer = object | ((args: Args) => object);

export const ok = (more: object = {}) => ({ ok: true, ...more });
export const no = (error: string) => ({ ok: false, error });
export const posted = ok({ ts: '1800000001.000001' });

export const line = (text: string): Block => ({ block: 'line', line: [{ text, meaning: 'plain' }] });

export const reply = (more: Partial<QueuedReply> = {}, ...blocks: Block[]): QueuedReply => ({
  id: 'answer m1',
  to: { workspace: 'T1', channel: 'C1', thread: '1800000000.000100' },
  purpose: 'answer',
  about: 'm1',
  reply: { blocks: blocks.length > 0 ? blocks : [line('The price leaves £4.01 each.')] },
  attempts: 0,
  interrupted: false,
  ...more,
});

const settings = { botToken: 'xoxb-test-1', transport: { mode: 'socket', appToken: 'xapp-test-1' } } as const;
const us = { team: 'T1', botUser: 'UBOT', bot: 'BBOT', teamUrl: 'https://net-loft.slack.com/' };

/** The workspace T1, known without asking. */
const ours = (log: Log): Workspaces => {
  const here = workspaceOf({ settings, log, now: () => 0 }, us, settings.botToken);
  return { of: async (team) => (team === 'T1' ? here : undefined), removed: () => undefined, teams: async () => ['T1'] };
};

const files: FileMaker = {
  make: (file) => ({ bytes: new TextEncoder().encode(file.name === 'empty.csv' ? '' : 'BEGIN:VCALENDAR\r\n'), type: 'text/calendar' }),
};

/** For the tests of one file: each scripted answer must be asked for, in order, and nothing else may be. */
export const scriptedSlack = () => {
  const asked: { readonly method: string; readonly args: Args }[] = [];
  let log = memoryLog();
  beforeAll(() => nock.disableNetConnect());
  afterAll(() => nock.enableNetConnect());
  beforeEach(() => {
    asked.length = 0;
    log = memoryLog();
  });
  afterEach(() => {
    expect(nock.pendingMocks()).toEqual([]);
    nock.cleanAll();
  });
  return {
    asked,
    logLines: () => log.lines,
    poster: (): Poster => createPoster({ workspaces: ours(log.log), files, log: log.log }),
    slack: (method: string, answer: Answer, status = 200, headers: Record<string, string> = {}) =>
      nock('https://slack.com')
        .post(`/api/${method}`)
        .reply((_uri, body) => {
          const args = (typeof body === 'string' ? Object.fromEntries(new URLSearchParams(body)) : body) as Args;
          asked.push({ method, args });
          return [status, typeof answer === 'function' ? answer(args) : answer, headers];
        }),
  };
};
