// The small commands as they are run: a backup beside a working bot, its restore, the check, an export, and one thread forgotten.

import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { newPlace, type Place } from '../support/a-bot.ts';
import { type Bot, deliver, until } from '../support/bot-process.ts';
import { mention } from '../support/slack-deliveries.ts';

const run = (command: string, ...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`dist/run-${command}.js`, ...args], {
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] },
  });
  expect(stderr).not.toMatch(/ {4}at |node_modules/);
  return { status, stdout, stderr };
};

const threads = ['1800001100.000100', '1800001101.000100'];

const answered = async (place: Place): Promise<Bot> => {
  const bot = await place.start();
  for (const ts of threads) {
    expect(await deliver(bot.port ?? 0, mention('<@UBOT> 12 corsages at 30 inc', { ts, channel: `C${ts}` }))).toBe(200);
  }
  await until(() => threads.every((ts) => place.answers(ts).length === 1), 'both answers');
  return bot;
};

describe('the commands', { timeout: 180_000 }, () => {
  it('back up, check and export beside the bot; restore and forget without it', async () => {
    const place = await newPlace();
    const bot = await answered(place);
    const at = ['--store', place.store];

    expect(run('check-store', ...at)).toMatchObject({ status: 0, stdout: expect.stringContaining('No fault found.') });
    const saved = run('backup', ...at, '--to', join(place.folder, 'kept'));
    expect(saved).toMatchObject({ status: 0, stdout: expect.stringContaining('read back without a fault') });
    const [name = ''] = readdirSync(join(place.folder, 'kept'));
    const backup = join(place.folder, 'kept', name);
    expect(name).toMatch(/^benchbell-\d{8}T\d{6}Z\.db$/);
    expect(statSync(backup).mode & 0o777).toBe(0o600);

    const all = JSON.parse(run('export', ...at).stdout);
    expect(all).toMatchObject({ format: 1, workspace: 'T1', threads: [{ state: { lines: [{ count: 12 }] } }, {}] });
    const file = join(place.folder, 'one.json');
    expect(run('export', ...at, '--channel', `C${threads[0]}`, '--thread', threads[0] ?? '', '--out', file).status).toBe(0);
    expect(JSON.parse(readFileSync(file, 'utf8')).entries.length).toBeGreaterThan(0);

    const one = ['--channel', `C${threads[0]}`, '--thread', threads[0] ?? ''];
    expect(run('restore', backup, ...at)).toMatchObject({
      status: 1,
      stderr: expect.stringContaining(`in use by process ${bot.process.pid}`),
    });
    expect(run('forget', ...at, ...one)).toMatchObject({ status: 1, stderr: expect.stringContaining('Stop that one first') });
    await bot.stop();

    expect(run('forget', ...at, ...one)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^Forgotten: \d+ entries, 1 messages, 1 replies/),
    });
    expect(run('forget', ...at, ...one)).toMatchObject({ status: 1, stdout: expect.stringContaining('There was nothing of that thread') });
    expect(JSON.parse(run('export', ...at).stdout).threads).toHaveLength(1);

    const restored = run('restore', backup, ...at);
    expect(restored).toMatchObject({ status: 0, stdout: expect.stringContaining('What was there before is kept as') });
    expect(JSON.parse(run('export', ...at).stdout).threads).toHaveLength(2);
    const again = await place.start();
    expect(await again.stop()).toBe(0);
    expect(place.slack.messages).toHaveLength(2);
  });

  it('find a snapshot that is not what its log says, and an unsound backup', async () => {
    const place = await newPlace();
    await (await answered(place)).stop();
    const db = new Database(place.store);
    db.exec(`UPDATE threads SET state = json_set(state, '$.material', 'dried') WHERE seq = 1`);
    db.close();
    const at = ['--store', place.store];
    expect(run('check-store', ...at)).toMatchObject({ status: 1, stdout: expect.stringContaining('is not what its log says') });

    const broken = join(place.folder, 'broken.db');
    copyFileSync(place.store, broken);
    writeFileSync(broken, readFileSync(broken).fill(0xa5, 5000));
    expect(run('restore', broken, ...at).status).toBe(1);
    expect(run('check-store', ...at).stdout).toContain('2 threads');
  });

  it('say what is wrong with their arguments, and make no database by looking for one', async () => {
    const nowhere = join((await newPlace()).folder, 'none.sqlite');
    for (const command of ['backup', 'check-store', 'export']) {
      expect(run(command, '--store', nowhere)).toMatchObject({ status: 1, stderr: expect.stringContaining('There is no database') });
    }
    expect(run('restore', '--store', nowhere)).toMatchObject({ status: 2, stderr: expect.stringContaining('npm run restore --') });
    expect(run('forget', '--store', nowhere, '--thread', '1')).toMatchObject({ status: 2, stderr: expect.stringContaining('--channel') });
    expect(run('backup', '--too', 'x')).toMatchObject({ status: 2, stderr: expect.stringContaining('Use: npm run backup --') });
    expect(run('check-store', 'extra')).toMatchObject({ status: 2, stderr: expect.stringContaining('one value too many') });
    expect(existsSync(nowhere)).toBe(false);
  });
});
