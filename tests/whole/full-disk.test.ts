// The disk in the way of the whole program: nothing lost, nothing half stored, one clear line in the log, and a word to whoever had to wait.

import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { logOf, newPlace, refusedStart, sendUntilTaken } from '../support/a-bot.ts';
import { deliver, until } from '../support/bot-process.ts';
import { fillDisk, growNoMore, readOnly, smallDisk } from '../support/full-disks.ts';
import { mention } from '../support/slack-deliveries.ts';
import { aUsedStore, waitingThreads } from '../support/used-store.ts';

const order = (ts: string, channel = 'C1') => mention('<@UBOT> 12 corsages at 30 inc', { ts, channel });
const first = '1800000500.000100';
const waiting = Array.from({ length: 3 }, (_, n) => `180000060${n}.000100`);

describe('a disk that fills while the bot works', { timeout: 180_000 }, () => {
  it.each([
    ['full, as far as this user may fill one', 'disk'],
    ['at the end of what a file may grow to', 'limit'],
  ])('%s: loses nothing, says so once, and answers when there is room', async (_, kind) => {
    const place = await newPlace();
    const disk = kind === 'disk' ? smallDisk(8) : undefined;
    const store = join(disk ?? place.folder, 'studio.sqlite');
    const bot = await place.start({ BENCHBELL_STORE: store });
    expect(await deliver(bot.port ?? 0, order(first))).toBe(200);
    await until(() => logOf(bot).some(({ what, outcome }) => what === 'reply' && outcome === 'posted'), 'an answer before');
    const { fill, makeRoom } = disk === undefined ? growNoMore(bot, store) : fillDisk(disk);
    fill();
    const sending = waiting.map((ts, n) => sendUntilTaken(() => bot, order(ts, `C${n}`)));
    await until(() => logOf(bot).some(({ what }) => what === 'store'), 'the line about the disk');
    await new Promise((resolve) => setTimeout(resolve, 1_500));
    expect(place.slack.messages).toHaveLength(1);
    makeRoom();
    await Promise.all(sending);
    await until(() => waiting.every((ts) => place.answers(ts).length === 1), 'the answers afterwards');
    const said = logOf(bot).filter(({ what }) => what === 'store');
    expect(said.map(({ outcome }) => outcome)).toEqual(['waiting', 'works again']);
    expect(said[0]?.['msg']).toContain('Nothing was stored');
    if (disk !== undefined) expect(said[0]?.['reason']).toBe('disk-full');
    expect(await bot.stop()).toBe(0);
    expect(place.slack.messages).toHaveLength(4);
  });
});

it('a disk that can only be read stops the start, harms nothing, and all is answered once it can be written', {
  timeout: 180_000,
}, async () => {
  const place = await newPlace();
  const disk = smallDisk(8);
  const folder = disk ?? place.folder;
  const store = join(folder, 'studio.sqlite');
  aUsedStore(store);
  const held = readOnly(folder, disk !== undefined, store);
  expect(await refusedStart(place, { BENCHBELL_STORE: store })).toContain('studio.sqlite cannot be written');
  held.giveBack();
  const bot = await place.start({ BENCHBELL_STORE: store });
  await until(() => waitingThreads.every((ts) => place.answers(ts).length === 1), 'the answers');
  expect(await bot.stop()).toBe(0);
});
