// The one summary message of a thread: posted once there are pieces and a date, changed in place, and never a second one.

import { afterEach, beforeEach, expect, test } from 'vitest';
import { type AtWork, root, startAtWork } from '../../support/slack-at-work.ts';
import { changed, deleted, mention, message } from '../../support/slack-deliveries.ts';

let at: AtWork;
beforeEach(async () => {
  at = await startAtWork();
});
afterEach(async () => {
  expect(at.faults()).toEqual([]);
  await at.stop();
});

const order = () => at.deliver(mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts: root }));
let replies = 0;
const say = (text: string) => {
  replies += 1;
  return at.deliver(message(text, { ts: `18000000${30 + replies}.000100`, thread_ts: root }));
};
const updates = () => at.slack.callsOf('chat.update').length;

test('comes once the event has pieces and a date, and follows what changes', async () => {
  await order();
  expect(at.summaries()).toEqual([]);
  await say('dried, event 14 March');
  expect(at.summaries()).toHaveLength(1);
  const [{ ts } = { ts: '' }] = at.summaries();
  await say('made 12');
  await say('and 4 crowns at 65');
  expect(at.summaries().map((one) => one.ts)).toEqual([ts]);
  expect(at.summaries()[0]?.text).toContain('12 of 40 buttonholes, 0 of 4 flower crowns');
});

test('questions and small talk leave it alone', async () => {
  await order();
  await say('dried, event 14 March');
  const before = updates();
  await say('what is left to make?');
  await say('lovely, thanks!');
  expect(updates()).toBe(before);
});

test('follows an edit and a deletion', async () => {
  await order();
  await say('dried, event 14 March');
  await at.deliver(changed('<@UBOT> 40 lapel pieces at 25 inc tax', '<@UBOT> 12 lapel pieces at 25 inc tax', {}, { ts: root }));
  expect(at.summaries()[0]?.text).toContain('0 of 12 buttonholes');
  await at.deliver(deleted({}, { ts: root }));
  expect(at.summaries()).toHaveLength(1);
  expect(at.summaries()[0]?.text).toContain('no pieces yet');
});

test('a lost answer makes no second one', async () => {
  await order();
  at.slack.failNext('chat.postMessage', { error: 'internal_error' }, { lost: 'answer' });
  await say('dried, event 14 March');
  await expect.poll(() => at.summaries().length, { timeout: 180_000 }).toBe(1);
  await at.settled();
  await say('made 12');
  expect(at.summaries()).toHaveLength(1);
  expect(at.answers()).toHaveLength(3);
});

test('“summary” leads to it instead of saying it all again elsewhere', async () => {
  await order();
  await say('dried, event 14 March');
  const [kept] = at.summaries();
  await say('summary');
  const url = `https://net-loft.slack.com/archives/C1/p${kept?.ts.replace('.', '')}?thread_ts=${root}&cid=C1`;
  expect(JSON.stringify(at.answers().at(-1)?.blocks)).toContain(JSON.stringify(url));
});

test('“open events” leads to each thread', async () => {
  await order();
  await at.deliver(mention('<@UBOT> 8 corsages at 35, dried, event 20 March', { ts: '1800000700.000100', channel: 'C2' }));
  await say('open events');
  const said = JSON.stringify(at.answers().at(-1)?.blocks);
  for (const path of [`C1/p${root.replace('.', '')}`, 'C2/p1800000700000100'])
    expect(said).toContain(`https://net-loft.slack.com/archives/${path}`);
});

test('none where another organisation reads along', async () => {
  const delivery = mention('<@UBOT> 40 lapel pieces at 25 inc tax, dried, event 14 March', { ts: root });
  await at.deliver({ ...delivery, is_ext_shared_channel: true });
  expect([at.answers().length, at.summaries().length]).toEqual([1, 0]);
});
