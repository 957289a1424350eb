// A price list dropped into a direct message: fetched from Slack alone, and only if it is one.

import { afterEach, beforeEach, expect, test } from 'vitest';
import { isSlacks } from '../../../src/hosts/slack/dropped-file.ts';
import { eventCallback, message } from '../../support/slack-deliveries.ts';
import { type Running, runSlackHost, until } from '../../support/slack-running.ts';

let running: Running;
beforeEach(async () => {
  running = await runSlackHost('socket');
});
afterEach(() => running.stop());

const csv = 'item,price,pack\nstatice,4.50,10\n';
const dropped = (more: object = {}, body: string | Buffer = csv, headers: Record<string, string> = { 'content-type': 'text/csv' }) => {
  running.slack.files.set('/files/prices.csv', { body, headers });
  const file = {
    id: 'F1',
    name: 'prices.csv',
    filetype: 'csv',
    mimetype: 'text/csv',
    size: 33,
    mode: 'hosted',
    url_private_download: running.slack.fileUrl('/files/prices.csv'),
    ...more,
  };
  return message('', { subtype: 'file_share', channel: 'D1', channel_type: 'im', files: [file] });
};
const content = async (delivery: object) => {
  await running.deliver(delivery);
  await until(() => running.inbox.filled.length > 0);
  return running.inbox.filled[0]?.content;
};

test('is fetched with our token and handed over; the empty message is not', async () => {
  expect(await content(dropped())).toEqual({ text: csv });
  expect(running.inbox.files).toEqual([
    expect.objectContaining({ kind: 'file', author: 'UAILSA', channel: 'D1', thread: '1800000000.000100' }),
  ]);
  expect(running.slack.fileTokens).toEqual(['Bearer xoxb-test-1']);
  expect(running.inbox.kept).toEqual([]);
});
test('the token goes to no other host, though it be this very machine by another name', async () => {
  const elsewhere = running.slack.fileUrl('/files/prices.csv').replace('127.0.0.1', 'localhost');
  expect(await content(dropped({ url_private_download: elsewhere }))).toEqual({ unreadable: 'unavailable' });
  expect(running.slack.fileTokens).toEqual([]);
});

test.each([
  'https://files.slack.com.example.org/p.csv',
  'http://files.slack.com/p.csv',
  'https://example.org/https://files.slack.com/p.csv',
  'https://files.slack.com@example.org/p.csv',
  'files.slack.com/p.csv',
])('away from the stand-in only https://files.slack.com is Slack’s: not %s', (url) => {
  expect(isSlacks(url, undefined)).toBe(false);
});
test('and that it is', () => {
  expect(isSlacks('https://files.slack.com/files-pri/T1-F1/download/prices.csv', undefined)).toBe(true);
});

test('nor after a redirect', async () => {
  const other = running.slack.fileUrl('/files/elsewhere.csv');
  running.slack.files.set('/files/elsewhere.csv', { body: csv, headers: {} });
  expect(await content(dropped({}, '', { location: other }))).toEqual({ unreadable: 'unavailable' });
  expect(running.slack.fileTokens).toHaveLength(1);
});
test.each<[string, object, string | Buffer, string, string]>([
  ['too large by its own account', { size: 2_000_000 }, csv, 'text/csv', 'too large'],
  ['too large whatever it says', { size: 10 }, 'x'.repeat(1_000_001), 'text/csv', 'too large'],
  ['a sign-in page instead', {}, '<html>', 'text/html; charset=utf-8', 'unavailable'],
  ['a workbook under a false name', {}, Buffer.from([80, 75, 3, 4, 0, 0]), 'text/csv', 'not a list'],
  ['removed by now', { mode: 'tombstone' }, csv, 'text/csv', 'unavailable'],
])('%s', async (_what, more, body, type, unreadable) => {
  expect(await content(dropped(more, body, { 'content-type': type }))).toEqual({ unreadable });
});
test('a picture is none of our business', async () => {
  await running.deliver(dropped({ name: 'boards.png', filetype: 'png', mimetype: 'image/png' }));
  await running.deliver(eventCallback({ type: 'member_joined_channel', user: 'U2', channel: 'C1' }));
  expect([running.inbox.files, running.slack.fileTokens]).toEqual([[], []]);
});

test('it is kept before Slack is told, and fetched again where the network failed', async () => {
  running.slack.failFile('/files/prices.csv');
  const told = await running.deliver(dropped());
  expect(told.acked).toBe(true);
  expect(running.inbox.toFetch.map(({ message }) => message)).toEqual(['1800000000.000100/F1']);
  await until(() => running.inbox.filled.length > 0);
  expect(running.inbox.filled).toEqual([{ message: '1800000000.000100/F1', content: { text: csv } }]);
  expect(running.slack.fileTokens).toHaveLength(2);
});
test('the same file told of twice is one', async () => {
  const delivery = dropped();
  await running.deliver(delivery);
  await running.deliver(delivery, 1);
  await until(() => running.inbox.filled.length > 0);
  expect(running.inbox.files).toHaveLength(1);
});
test('a guest’s list is marked as one', async () => {
  running.slack.people.set('UAILSA', { is_restricted: true });
  await running.deliver(dropped());
  expect(running.inbox.files.map(({ guest }) => guest)).toEqual([true]);
});
