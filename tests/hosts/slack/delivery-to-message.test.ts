// Who is heard, and as what. Shapes of the deliveries: docs.slack.dev/reference/events/message and its subtypes, read 2026-09.

import { describe, expect, test } from 'vitest';
import { asMessageDelivery } from '../../../src/hosts/slack/delivery.ts';
import { deliveryToMessage } from '../../../src/hosts/slack/delivery-to-message.ts';
import { changed, deleted, eventCallback, mention, message } from '../../support/slack-deliveries.ts';

const us = { team: 'T1', botUser: 'UBOT' };
const known = { knowsThread: () => true };
const unknown = { knowsThread: () => false };

const heard = (delivery: object, threads = known) => {
  const read = asMessageDelivery(delivery);
  return read && deliveryToMessage(read, us, threads);
};

describe('new messages', () => {
  test('a mention at the top of a channel opens the thread of that message', () => {
    expect(heard(mention('<@UBOT> 40 bouts'), unknown)).toEqual({
      workspace: 'T1',
      channel: 'C1',
      thread: '1800000000.000100',
      id: '1800000000.000100',
      revision: '1800000000.000100',
      author: 'UAILSA',
      kind: 'new',
      text: '40 bouts',
      addressed: true,
      shared: false,
      sentAt: 1_800_000_000_000,
    });
  });
  test('in a thread, the thread is its root', () => {
    expect(heard(message('12 made', { thread_ts: '1799999999.000001' }))).toMatchObject({ thread: '1799999999.000001', addressed: false });
  });
  test.each(['im', 'mpim', 'channel', 'group'])('without a mention, in a thread we don’t know: %s', (channel_type) => {
    const said = heard(message('40 bouts', { channel_type }), unknown);
    if (channel_type === 'im') expect(said).toMatchObject({ addressed: true });
    else expect(said).toBeUndefined();
  });
  test.each(['file_share', 'thread_broadcast'])('%s is somebody speaking', (subtype) => {
    expect(heard(message('12 made', { subtype }))).toMatchObject({ kind: 'new', text: '12 made' });
  });
  test.each(['channel_join', 'channel_topic', 'bot_message', 'me_message', 'reminder_add', 'channel_name'])('%s is not', (subtype) => {
    expect(heard(message('<@UBOT> 12 made', { subtype }))).toBeUndefined();
  });
  test.each<[string, object]>([
    ['a bot', { bot_id: 'B2' }],
    ['a bot by its profile', { bot_profile: { id: 'B2' } }],
    ['ourselves', { user: 'UBOT' }],
    ['somebody of another organisation', { team: 'T9' }],
    ['somebody of another organisation, newer fields', { user_team: 'T9', source_team: 'T9' }],
    ['nobody', { user: undefined }],
  ])('%s is not heard', (_who, more) => {
    expect(heard(message('<@UBOT> 40 bouts', more))).toBeUndefined();
  });
  test('another bot’s mention is not heard', () => {
    expect(heard(mention('<@UBOT> 40 bouts', { bot_id: 'B2' }))).toBeUndefined();
  });
  test('a shared channel is marked', () => {
    expect(heard({ ...message('<@UBOT> 40 bouts'), is_ext_shared_channel: true })).toMatchObject({ shared: true });
  });
  test('the workspace is the one the app was installed in', () => {
    const delivery = { ...message('<@UBOT> 40 bouts'), team_id: 'T9' };
    expect(heard(delivery)).toMatchObject({ workspace: 'T1' });
  });
  test('an empty message that addresses us is heard, and empty', () => {
    expect(heard(mention('<@UBOT>'))).toMatchObject({ text: '' });
  });
});

describe('edits', () => {
  test('keep the message’s id and carry a revision of their own', () => {
    expect(heard(changed('40 bouts', '45 bouts'))).toMatchObject({
      kind: 'edit',
      id: '1800000000.000100',
      revision: '1800000060.000000',
      text: '45 bouts',
    });
  });
  test('with unchanged words are no edits: unfurls and language marks arrive so', () => {
    expect(heard(changed('40 bouts', '40 bouts'))).toBeUndefined();
  });
  test('without the mark of an edit are none', () => {
    expect(heard(changed('40 bouts', '45 bouts', { message: { ts: '1', user: 'UAILSA', text: '45 bouts' } }))).toBeUndefined();
  });
  test('of our own replies are ours', () => {
    expect(heard(changed('a', 'b', {}, { user: 'UBOT', bot_id: 'BBOT' }))).toBeUndefined();
  });
  test('in threads we don’t know are passed over', () => {
    expect(heard(changed('40 bouts', '45 bouts'), unknown)).toBeUndefined();
  });
  test('that add the mention open the thread', () => {
    expect(heard(changed('40 bouts', '<@UBOT> 40 bouts'), unknown)).toMatchObject({
      kind: 'new',
      text: '40 bouts',
      revision: '1800000060.000000',
    });
  });
  test('of a direct message stay edits', () => {
    expect(heard(changed('40 bouts', '45 bouts', { channel_type: 'im' }), unknown)).toMatchObject({ kind: 'edit' });
  });
});

describe('deletions', () => {
  test('withdraw the message', () => {
    expect(heard(deleted())).toMatchObject({ kind: 'delete', id: '1800000000.000100', revision: 'deleted', text: '', author: 'UAILSA' });
  });
  test('name the thread they were in', () => {
    expect(heard(deleted({}, { thread_ts: '1799999999.000001' }))).toMatchObject({ thread: '1799999999.000001' });
  });
  test('of a root with replies leave a tombstone behind', () => {
    const before = { ts: '1800000000.000100', thread_ts: '1800000000.000100', user: 'UAILSA', text: '40 bouts' };
    const stone = {
      ts: '1800000000.000100',
      thread_ts: '1800000000.000100',
      user: 'USLACKBOT',
      subtype: 'tombstone',
      text: 'This message was deleted.',
    };
    const delivery = changed('', '', { message: stone, previous_message: before });
    expect(heard(delivery)).toMatchObject({ kind: 'delete', id: '1800000000.000100', text: '' });
  });
  test('of a bot’s message, or where we know nothing, are passed over', () => {
    expect(heard(deleted({}, { bot_id: 'B2' }))).toBeUndefined();
    expect(heard(deleted(), unknown)).toBeUndefined();
  });
});

test('anything else is no message', () => {
  expect(heard(eventCallback({ type: 'reaction_added', user: 'U1' }))).toBeUndefined();
  expect(asMessageDelivery({ type: 'event_callback', team_id: 'T1' })).toBeUndefined();
  expect(asMessageDelivery(undefined)).toBeUndefined();
});
