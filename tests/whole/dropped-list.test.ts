// A price list dropped into a direct message, and the bot killed while it fetches it: the list is fetched after the next start, and imported once.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type Bot, deliver, startBot, until } from '../support/bot-process.ts';
import { message } from '../support/slack-deliveries.ts';
import { type StandIn, startStandIn } from '../support/slack-stand-in.ts';

let slack: StandIn;
let folder: string;
let bot: Bot | undefined;

beforeEach(async () => {
  slack = await startStandIn();
  folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
});
afterEach(async () => {
  await bot?.kill();
  await slack.close();
  rmSync(folder, { recursive: true, force: true });
});

const start = async (): Promise<Bot> => {
  bot = await startBot({ mode: 'http', apiUrl: slack.apiUrl, store: join(folder, 'studio.sqlite') });
  return bot;
};
const path = '/files/prices.csv';
const said = (): readonly string[] => slack.messages.filter(({ channel }) => channel === 'D1').map(({ text }) => text.split('\n')[0] ?? '');

it('is fetched after a kill, and once', { timeout: 180_000 }, async () => {
  const body = 'item,price,size\nstatice,4.50,10\nbunny tails,14.50,50\n';
  slack.files.set(path, { body, headers: { 'content-type': 'text/csv' } });
  slack.heldFiles.add(path);
  const file = {
    id: 'F1',
    name: 'prices.csv',
    filetype: 'csv',
    size: body.length,
    mode: 'hosted',
    url_private_download: slack.fileUrl(path),
  };
  const dropped = message('', { subtype: 'file_share', channel: 'D1', channel_type: 'im', files: [file] });
  const first = await start();
  expect(await deliver(first.port ?? 0, dropped)).toBe(200);
  await until(() => slack.fileTokens.length > 0, 'the fetch to begin');
  await first.kill();
  slack.heldFiles.clear();
  const second = await start();
  await until(() => said().length > 0, 'an answer about the list');
  await deliver(second.port ?? 0, dropped); // Slack may tell of it again
  await second.stop();
  expect(said()).toEqual([expect.stringMatching(/2/)]);
  expect(said().join()).not.toMatch(/could not|can't/);
});
