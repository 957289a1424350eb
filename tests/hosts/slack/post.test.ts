// Posting a reply so that it appears once. Slack's answers are scripted; the Web API client is the real one.

import nock from 'nock';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { FileMaker, QueuedReply } from '../../../src/assistant/ports.ts';
import { slackClient } from '../../../src/hosts/slack/clients.ts';
import { createPoster } from '../../../src/hosts/slack/post.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { messageFaults } from '../../support/block-kit-limits.ts';
import { memoryLog } from '../../support/slack-inbox.ts';

const settings = { botToken: 'xoxb-test-1', transport: { mode: 'socket', appToken: 'xapp-test-1' } } as const;
const files: FileMaker = {
  make: (file) => ({ bytes: new TextEncoder().encode(file.name === 'empty.csv' ? '' : 'BEGIN:VCALENDAR\r\n'), type: 'text/calendar' }),
};

beforeAll(() => nock.disableNetConnect());
afterAll(() => nock.enableNetConnect());
let log: ReturnType<typeof memoryLog>;
beforeEach(() => {
  log = memoryLog();
});
afterEach(() => {
  expect(nock.pendingMocks()).toEqual([]);
  nock.cleanAll();
});

// Made after nock has taken hold of fetch: the client keeps the fetch it finds.
const poster = () => createPoster({ client: slackClient(settings, log.log), files, log: log.log });

const line = (text: string): Block => ({ block: 'line', line: [{ text, meaning: 'plain' }] });
const reply = (more: Partial<QueuedReply> = {}, ...blocks: Block[]): QueuedReply => ({
  id: 'answer m1',
  to: { workspace: 'T1', channel: 'C1', thread: '1800000000.000100' },
  purpose: 'answer',
  about: 'm1',
  reply: { blocks: blocks.length > 0 ? blocks : [line('The price leaves £4.01 each.')] },
  attempts: 0,
  interrupted: false,
  ...more,
});

type Args = Record<string, string>;
const asked: { method: string; args: Args }[] = [];
beforeEach(() => {
  asked.length = 0;
});
const slack = (method: string, answer: object | ((args: Args) => object), status = 200, headers: Record<string, string> = {}) =>
  nock('https://slack.com')
    .post(`/api/${method}`)
    .reply((_uri, body) => {
      const args = (typeof body === 'string' ? Object.fromEntries(new URLSearchParams(body)) : body) as Args;
      asked.push({ method, args });
      return [status, typeof answer === 'function' ? answer(args) : answer, headers];
    });
const ok = (more: object = {}) => ({ ok: true, ...more });
const no = (error: string) => ({ ok: false, error });
const posted = ok({ ts: '1800000001.000001' });

describe('a new reply', () => {
  test('goes to its thread with blocks, a full text and its mark, and nothing that links or unfurls', async () => {
    slack('chat.postMessage', posted);
    expect(await poster().post(reply())).toEqual({ outcome: 'posted', hostId: '1800000001.000001' });
    const args = asked[0]?.args ?? {};
    expect(args).toMatchObject({ channel: 'C1', thread_ts: '1800000000.000100', text: 'The price leaves £4.01 each.' });
    expect([args['unfurl_links'], args['unfurl_media'], args['mrkdwn'], args['parse']].map(String)).toEqual([
      'false',
      'false',
      'false',
      'none',
    ]);
    expect(args).not.toHaveProperty('link_names');
    expect(JSON.parse(args['metadata'] ?? '')).toEqual({ event_type: 'benchbell_reply', event_payload: { reply: 'answer m1' } });
    expect(messageFaults({ text: args['text'] ?? '', blocks: JSON.parse(args['blocks'] ?? '[]') as unknown[] })).toEqual([]);
  });

  test('without a thread starts one of its own', async () => {
    slack('chat.postMessage', posted);
    await poster().post(reply({ purpose: 'reminder', to: { workspace: 'T1', channel: 'C1', thread: '' } }));
    expect(asked[0]?.args).not.toHaveProperty('thread_ts');
  });
});

describe('an edited message’s reply', () => {
  test('is changed in place', async () => {
    slack('chat.update', ok({ ts: '1800000001.000001' }));
    expect(await poster().post(reply({ replaces: '1800000001.000001' }))).toEqual({ outcome: 'posted', hostId: '1800000001.000001' });
    expect(asked[0]?.args).toMatchObject({ ts: '1800000001.000001', parse: 'none', channel: 'C1' });
    expect(asked[0]?.args).toHaveProperty('blocks');
  });
  test.each(['message_not_found', 'cant_update_message', 'edit_window_closed'])(
    'is posted anew when it can no longer be changed: %s',
    async (error) => {
      slack('chat.update', no(error));
      slack('chat.postMessage', posted);
      expect(await poster().post(reply({ replaces: '1800000001.000009' }))).toEqual({ outcome: 'posted', hostId: '1800000001.000001' });
    },
  );
});

describe('when it is not clear whether a reply arrived', () => {
  const withMark = { ts: '1800000001.000001', metadata: { event_type: 'benchbell_reply', event_payload: { reply: 'answer m1' } } };

  const lost = () => nock('https://slack.com').post('/api/chat.postMessage').replyWithError('socket hang up');

  test.each<[string, () => unknown]>([
    ['the answer was lost', lost],
    ['Slack’s machine failed', () => slack('chat.postMessage', {}, 502)],
  ])('%s: it keeps, and is to be looked for', async (_what, happens) => {
    happens();
    expect(await poster().post(reply())).toMatchObject({ outcome: 'later', unsure: true });
  });
  test('Slack answered: then it is certain', async () => {
    slack('chat.postMessage', {}, 429, { 'retry-after': '1' });
    expect(await poster().post(reply())).not.toHaveProperty('unsure');
  });
  test('it is found by its mark, through all pages', async () => {
    slack('conversations.replies', ok({ messages: [{ ts: '1' }], response_metadata: { next_cursor: 'p2' } }));
    slack('conversations.replies', (args) => (args['cursor'] === 'p2' ? ok({ messages: [withMark] }) : no('bad_cursor')));
    expect(await poster().find(reply({ interrupted: true }))).toBe('1800000001.000001');
  });
  test('another reply’s mark is not its own', async () => {
    slack(
      'conversations.replies',
      ok({ messages: [{ ...withMark, metadata: { event_type: 'benchbell_reply', event_payload: { reply: 'another' } } }] }),
    );
    expect(await poster().find(reply())).toBeUndefined();
  });
  test('a thread that is gone holds nothing', async () => {
    slack('conversations.replies', no('thread_not_found'));
    expect(await poster().find(reply())).toBeUndefined();
  });
  test.each<[string, object, number]>([
    ['Slack’s machine failed', {}, 500],
    ['the token was revoked', { ok: false, error: 'token_revoked' }, 200],
  ])('it says so when it could not look: %s', async (_what, answer, status) => {
    slack('conversations.replies', answer, status);
    await expect(poster().find(reply())).rejects.toThrow();
  });
  test('a reply that opens a thread is looked for in the channel', async () => {
    slack('conversations.history', ok({ messages: [withMark] }));
    expect(await poster().find(reply({ to: { workspace: 'T1', channel: 'C1', thread: '' } }))).toBe('1800000001.000001');
  });
});

describe('what Slack’s refusals mean', () => {
  test('too many: waits as long as it is told', async () => {
    slack('chat.postMessage', {}, 429, { 'retry-after': '7' });
    expect(await poster().post(reply())).toEqual({ outcome: 'later', afterMilliseconds: 7_000, reason: 'rate limited' });
  });
  test.each(['internal_error', 'service_unavailable'])('Slack’s own trouble: later (%s)', async (error) => {
    slack('chat.postMessage', no(error));
    expect(await poster().post(reply())).toMatchObject({ outcome: 'later', reason: error });
  });
  test('each failure waits longer, up to five minutes', async () => {
    const waits: number[] = [];
    for (const attempts of [0, 3, 40]) {
      slack('chat.postMessage', {}, 503);
      const outcome = await poster().post(reply({ attempts }));
      if (outcome.outcome === 'later') waits.push(outcome.afterMilliseconds);
    }
    expect(waits).toEqual([1_000, 8_000, 300_000]);
  });
  test.each(['token_revoked', 'invalid_auth', 'account_inactive', 'missing_scope'])(
    'the operator must act: the reply keeps (%s)',
    async (error) => {
      slack('chat.postMessage', no(error));
      expect(await poster().post(reply())).toMatchObject({ outcome: 'later', reason: error });
    },
  );
  test.each(['channel_not_found', 'is_archived', 'not_in_channel', 'restricted_action'])(
    'nowhere to post: given up (%s)',
    async (error) => {
      slack('chat.postMessage', no(error));
      expect(await poster().post(reply())).toEqual({ outcome: 'refused', reason: error });
    },
  );
  test.each(['msg_blocks_too_long', 'invalid_blocks'])('blocks it will not take: the plain text goes instead (%s)', async (error) => {
    slack('chat.postMessage', no(error));
    slack('chat.postMessage', posted);
    expect(await poster().post(reply())).toMatchObject({ outcome: 'posted' });
    expect(asked[1]?.args).not.toHaveProperty('blocks');
    expect(asked[1]?.args).toMatchObject({ text: 'The price leaves £4.01 each.' });
  });
  test('no words of the reply reach the log', async () => {
    slack('chat.postMessage', no('channel_not_found'));
    await poster().post(reply());
    expect(log.lines.join('\n')).toContain('channel_not_found');
    expect(log.lines.join('\n')).not.toMatch(/4\.01|leaves|xoxb/);
  });
});

describe('files', () => {
  const calendar: Block = { block: 'file', file: { kind: 'calendar', name: 'bench.ics', alt: 'Bench days for the March wedding' } };
  const place = ok({ upload_url: 'https://files.slack.com/upload/v1/abc', file_id: 'F1' });
  const bytes = () => nock('https://files.slack.com').post('/upload/v1/abc');

  test('come after the words, described, with no token sent along', async () => {
    slack('files.getUploadURLExternal', place);
    let authorization: unknown = 'not asked';
    bytes().reply(function answer(this: nock.ReplyFnContext) {
      authorization = this.req.headers['authorization'];
      return [200, 'OK'];
    });
    slack('chat.postMessage', posted);
    slack('files.completeUploadExternal', ok());
    expect(await poster().post(reply({}, line('Here it is.'), calendar))).toMatchObject({ outcome: 'posted' });
    expect(asked.map(({ method }) => method)).toEqual(['files.getUploadURLExternal', 'chat.postMessage', 'files.completeUploadExternal']);
    expect(asked[0]?.args).toMatchObject({ filename: 'bench.ics', alt_txt: 'Bench days for the March wedding', length: '17' });
    expect(asked[2]?.args).toMatchObject({ channel_id: 'C1', thread_ts: '1800000000.000100' });
    expect(authorization).toBeUndefined();
  });
  test('the bytes cannot be sent: nothing is posted yet', async () => {
    slack('files.getUploadURLExternal', place);
    bytes().reply(503);
    expect(await poster().post(reply({}, line('Here it is.'), calendar))).toEqual({
      outcome: 'later',
      afterMilliseconds: 1_000,
      reason: expect.any(String),
    });
  });
  test('Slack refuses the file: the words go, and say that it is missing', async () => {
    slack('files.getUploadURLExternal', no('missing_scope'));
    slack('chat.postMessage', posted);
    slack('chat.postMessage', posted);
    expect(await poster().post(reply({}, line('Here it is.'), calendar))).toMatchObject({ outcome: 'posted' });
    expect(asked.at(-1)?.args).toMatchObject({ text: expect.stringContaining('could not be attached') });
  });
  test('an empty file is never sent: Slack refuses those', async () => {
    slack('chat.postMessage', posted);
    slack('chat.postMessage', posted);
    const empty: Block = { block: 'file', file: { kind: 'buying list', name: 'empty.csv', alt: 'Nothing to buy' } };
    expect(await poster().post(reply({}, line('Here it is.'), empty))).toMatchObject({ outcome: 'posted' });
  });
  test('what one message cannot hold goes along as a text file', async () => {
    slack('files.getUploadURLExternal', place);
    bytes().reply(200, 'OK');
    slack('chat.postMessage', posted);
    slack('files.completeUploadExternal', ok());
    await poster().post(
      reply({}, ...Array.from({ length: 300 }, (_each, row) => line(`Row ${row} with a good many words in it, as lists of wearers have.`))),
    );
    expect(asked[0]?.args).toMatchObject({ filename: 'reply.txt' });
    expect(asked[1]?.args['text']?.length).toBeLessThanOrEqual(4_000);
  });
});
