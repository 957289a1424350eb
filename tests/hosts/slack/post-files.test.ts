// Files with a reply: after the words, described, and never in their way.

import nock from 'nock';
import { expect, test } from 'vitest';
import type { Block } from '../../../src/reply/reply.ts';
import { line, no, ok, posted, reply, scriptedSlack } from '../../support/slack-answers.ts';

const { asked, poster, slack } = scriptedSlack();

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
