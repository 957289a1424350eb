// Posting a reply so that it appears once. Slack's answers are scripted; the Web API client is the real one.

import nock from 'nock';
import { describe, expect, test } from 'vitest';
import { messageFaults } from '../../support/block-kit-limits.ts';
import { no, ok, posted, reply, scriptedSlack } from '../../support/slack-answers.ts';

const { asked, logLines, poster, slack } = scriptedSlack();

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
    expect(logLines().join('\n')).toContain('channel_not_found');
    expect(logLines().join('\n')).not.toMatch(/4\.01|leaves|xoxb/);
  });
});
