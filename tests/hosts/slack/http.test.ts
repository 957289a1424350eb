// HTTP alone: the health page, signatures, and Slack's check of the address.

import { afterEach, expect, test } from 'vitest';
import { mention, postDelivery, signature } from '../../support/slack-deliveries.ts';
import { type Running, runSlackHost } from '../../support/slack-running.ts';

let running: Running;
afterEach(() => running.stop());
const start = async (): Promise<Running> => {
  running = await runSlackHost('http');
  return running;
};
test('says that it is well', async () => {
  const { port } = (await start()).host;
  const answer = await fetch(`http://127.0.0.1:${port}/healthz`);
  expect([answer.status, await answer.text()]).toEqual([200, 'well']);
});

test('refuses what is not signed, wrongly signed, old or of the future', async () => {
  const { port } = (await start()).host;
  const body = JSON.stringify(mention('<@UBOT> 40 bouts'));
  const now = Math.floor(Date.now() / 1000);
  const send = async (headers: Record<string, string>): Promise<number> =>
    (
      await fetch(`http://127.0.0.1:${port}/slack/events`, {
        method: 'POST',
        body,
        headers: { 'content-type': 'application/json', ...headers },
      })
    ).status;
  const signed = (at: number, secret?: string) => ({
    'x-slack-request-timestamp': String(at),
    'x-slack-signature': signature(body, at, secret),
  });
  expect(await send({})).toBe(401);
  expect(await send(signed(now, 'another secret'))).toBe(401);
  expect(await send(signed(now - 301))).toBe(401);
  expect(await send(signed(now + 310))).toBe(401);
  expect(await send({ ...signed(now), 'x-slack-request-timestamp': 'soon' })).toBe(401);
  expect(running.inbox.kept).toHaveLength(0);
  expect(await send(signed(now))).toBe(200);
  expect(running.inbox.kept).toHaveLength(1);
});

test('answers Slack’s check of the address', async () => {
  const { port } = (await start()).host;
  const answer = await postDelivery(port ?? 0, { type: 'url_verification', challenge: 'abc', event: undefined });
  expect(await answer.text()).toContain('abc');
});
