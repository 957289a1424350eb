// Nothing people send is ever run as code: the whole bot does its main job in a process where JavaScript cannot be made from text at all
// (node --disallow-code-generation-from-strings), and our own files load nothing by a name worked out while running.

import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { newPlace } from '../support/a-bot.ts';
import { deliver, startBot, until } from '../support/bot-process.ts';
import { mention } from '../support/slack-deliveries.ts';

const noCode = '--disallow-code-generation-from-strings';

it('is answered where text cannot become code', { timeout: 180_000 }, async () => {
  expect(spawnSync(process.execPath, [noCode, '-e', "eval('1')"], { encoding: 'utf8' }).stderr).toContain('EvalError');
  const place = await newPlace();
  const bot = await startBot({ mode: 'http', apiUrl: place.slack.apiUrl, store: place.store, script: [noCode, 'dist/main.js'] });
  const thread = '1800001200.000100';
  const said = '<@UBOT> 40 lapel pieces at 25 inc tax, dried, event 14 March';
  expect(await deliver(bot.port ?? 0, mention(said, { ts: thread }))).toBe(200);
  await until(() => place.answers(thread).length === 1, 'the answer');
  expect(place.answers(thread)[0]).toMatch(/^40 buttonholes at £25\.00, VAT included/);
  expect(await bot.stop()).toBe(0);
});

it('loads nothing by a name that was worked out', () => {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  expect(files.length).toBeGreaterThan(200);
  const suspicious = files.filter((file) =>
    /\beval\(|\bnew Function\b|\bimport\((?!['"][^'"$]+['"]\))|\brequire\((?!'[^']+'\))|node:vm|node:child_process/.test(
      readFileSync(`src/${file}`, 'utf8'),
    ),
  );
  expect(suspicious).toEqual([]);
});
