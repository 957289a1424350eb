// The buttons under a reply, tapped: from the reply that carries them to what the thread holds afterwards.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ThreadKey } from '../../../src/assistant/ports.ts';
import { type AtWork, type Button, buttonsOf, root, startAtWork } from '../../support/slack-at-work.ts';
import { mention, message, submitted, tap } from '../../support/slack-deliveries.ts';

const key: ThreadKey = { workspace: 'T1', channel: 'C1', thread: root };
let at: AtWork;
beforeEach(async () => {
  at = await startAtWork();
  await at.deliver(mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }));
  await at.deliver(message('dried, event 14 March', { ts: '1800000030.000100', thread_ts: root }));
});
afterEach(async () => {
  expect(at.faults()).toEqual([]);
  await at.stop();
});

const state = () => at.store.thread(key).state;
const button = (label: string, from = at.answers()): Button => {
  const all = from.flatMap(buttonsOf);
  const found = all.find(({ text, placeholder }) => (text ?? placeholder)?.text === label);
  if (!found) throw new Error(`no button “${label}” among ${all.map(({ text, placeholder }) => (text ?? placeholder)?.text).join(', ')}`);
  return found;
};
const tapped = (label: string, at?: string, more: object = {}) => {
  const { action_id, value } = button(label);
  return tap(action_id, { ...(value === undefined ? {} : { value }), ...more }, at);
};
const opened = (): { private_metadata: string } =>
  JSON.parse(at.slack.callsOf('views.open').at(-1)?.args['view'] ?? '{}') as { private_metadata: string };
const enter = (value: string, id = 'V2') =>
  submitted('number_form', { number: { value } }, { private_metadata: opened().private_metadata, id });
const lastAnswer = (): string => at.answers().at(-1)?.text ?? '';

test('a price and a calendar carry what a florist wants next', () => {
  const labels = at.answers().map((reply) => buttonsOf(reply).map(({ text, placeholder }) => (text ?? placeholder)?.text));
  expect(labels).toEqual([
    ['Show working', 'For the client', 'Set price'],
    ['Calendar file', 'Picture', 'Move date'],
  ]);
});

describe('move date', () => {
  const moveTo = (day: string, when = '1800000100.000001') => tapped('Move date', when, { type: 'datepicker', selected_date: day });

  test('moves the event, and a double click moves it once', async () => {
    await at.deliver(moveTo('2027-03-21'));
    await at.deliver(moveTo('2027-03-21', '1800000100.200001'));
    expect(state().date).toBe('2027-03-21');
    expect(lastAnswer()).toContain('Sun 14 March 2027 → Sun 21 March 2027');
    expect(at.answers()).toHaveLength(3);
  });
  test('there and back again on the same old message', async () => {
    await at.deliver(moveTo('2027-03-21'));
    await at.deliver(moveTo('2027-03-28', '1800000200.000001'));
    await at.deliver(moveTo('2027-03-21', '1800000300.000001'));
    expect(state().date).toBe('2027-03-21');
  });
  test('not into the past', async () => {
    await at.deliver(moveTo('2027-01-02'));
    expect(state().date).toBe('2027-03-14');
    expect(lastAnswer()).toMatch(/past/);
  });
});

describe('made some', () => {
  beforeEach(() => at.deliver(message('made 12', { ts: '1800000040.000100', thread_ts: root })));

  test('counts what was entered, once a form', async () => {
    await at.deliver(tapped('Made some'));
    await at.deliver(enter('8'));
    await at.deliver(enter('8'));
    expect(state().progress.buttonhole?.made).toBe(20);
    await at.deliver(tapped('Made some', '1800000500.000001'));
    await at.deliver(enter('8', 'V3'));
    expect(state().progress.buttonhole?.made).toBe(28);
    expect(lastAnswer()).toContain('28 of 40');
  });
  test('undo takes back the message it stands under, though others came since', async () => {
    await at.deliver(message('and 4 crowns at 65', { ts: '1800000050.000100', thread_ts: root }));
    await at.deliver(tapped('Undo'));
    await at.deliver(tapped('Undo', '1800000900.000001'));
    expect(state().progress.buttonhole?.made ?? 0).toBe(0);
    expect(state().lines.map(({ piece }) => piece)).toEqual(['buttonhole', 'flower crown']);
  });
});

test('set price prices again, and works on an old message', async () => {
  await at.deliver(message('made 12', { ts: '1800000040.000100', thread_ts: root }));
  await at.deliver(tapped('Set price'));
  await at.deliver(enter('27.50'));
  expect(state().lines[0]?.price).toEqual({ amount: '27.50', per: 'each' });
  expect(lastAnswer()).toContain('£25.00 → £27.50');
});

test('of several kinds each has its own price button', async () => {
  await at.deliver(message('and 4 crowns at 65', { ts: '1800000040.000100', thread_ts: root }));
  await at.deliver(tapped('Set flower crown price', undefined, { text: { type: 'plain_text', text: 'Set flower crown price' } }));
  expect(JSON.stringify(opened())).toContain('"label":{"type":"plain_text","text":"Set flower crown price"}');
  await at.deliver(enter('70'));
  expect(state().lines.map(({ piece, price }) => [piece, price?.amount])).toEqual([
    ['buttonhole', '25'],
    ['flower crown', '70'],
  ]);
});

test('files come into the thread, with words for those who do not see the picture', async () => {
  await at.deliver(tapped('Calendar file'));
  await at.deliver(tapped('Picture', '1800000200.000001'));
  const asked = at.slack.callsOf('files.getUploadURLExternal').map(({ args }) => [args['filename'], (args['alt_txt'] ?? '') !== '']);
  expect(asked).toEqual([
    [expect.stringMatching(/\.ics$/), true],
    [expect.stringMatching(/\.png$/), true],
  ]);
  expect(at.slack.callsOf('files.completeUploadExternal').map(({ args }) => args['thread_ts'])).toEqual([root, root]);
});

test('in a channel shared with another organisation a tap shows the client’s form only, also after a restart', async () => {
  const shared = '1800000700.000100';
  await at.deliver({ ...mention('<@UBOT> 12 bouts at 20 inc', { ts: shared, channel: 'C9' }), is_ext_shared_channel: true });
  const before = at.slack.messages.length;
  const { action_id, value } = button('Show working');
  const elsewhere = { channel: { id: 'C9' }, container: { type: 'message', message_ts: '1800000701.000001', thread_ts: shared } };
  await at.deliver({ ...tap(action_id, value === undefined ? {} : { value }), ...elsewhere, message: { thread_ts: shared } });
  expect(at.store.isShared('T1', 'C9')).toBe(true);
  const said = at.slack.messages.slice(before).map(({ text }) => text);
  expect(said).toHaveLength(1);
  expect(said.join()).not.toMatch(/[Ll]abour|wholesale|stems/);
});
