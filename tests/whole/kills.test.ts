// The promise that matters most, on the whole program: it is killed with SIGKILL again and again, at random moments and in the middle of its
// posts, while messages go on arriving. Every message Slack was told we have ends with one stored effect and one reply.
// BENCHBELL_KILLS sets how often it is killed (3 when left out); 50 messages arrive for each.

import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { openStore } from '../../src/store/sqlite-store.ts';
import { newPlace, sendUntilTaken } from '../support/a-bot.ts';
import type { Bot } from '../support/bot-process.ts';
import { mention } from '../support/slack-deliveries.ts';

const kills = Number(process.env['BENCHBELL_KILLS'] ?? 3);
const messages = kills * 50;
const channels = Math.max(20, Math.ceil(messages / 20)); // a channel takes one post a second
const threadOf = (n: number): string => `18${String(n).padStart(8, '0')}.000100`;

it(`killed ${kills} times while ${messages} messages arrive, it stores and answers each exactly once`, {
  timeout: 60_000 + kills * 12_000,
}, async () => {
  const { slack, store: path, start } = await newPlace();
  let bot: Bot | undefined = await start();
  let killed = 0;
  let taken = 0;

  /** Its own moment each time: while a post is carried out, right after it, or at some time or other. */
  const killOnce = async (): Promise<void> => {
    const dead = new Promise<void>((resolve) => {
      const kill = (): void => {
        delete slack.during.call;
        void bot?.kill().then(resolve);
      };
      if (killed % 3 === 2) setTimeout(kill, Math.random() * 400);
      else {
        const when = killed % 3 === 0 ? 'before' : 'after';
        let posts = Math.floor(Math.random() * 8);
        const patience = setTimeout(kill, 3_000); // nothing may be left to post
        slack.during.call = (method, at) => {
          if (method !== 'chat.postMessage' || at !== when) return;
          posts -= 1;
          if (posts >= 0) return;
          clearTimeout(patience);
          kill();
        };
      }
    });
    await dead;
    bot = undefined;
    killed += 1;
    bot = await start();
  };

  const send = async (): Promise<void> => {
    const lanes = 4;
    const lane = async (first: number): Promise<void> => {
      for (let n = first; n < messages; n += lanes) {
        const body = mention(`<@UBOT> ${1 + (n % 90)} corsages at 30 inc`, { ts: threadOf(n), channel: `C${n % channels}` });
        await sendUntilTaken(() => bot, body);
        taken += 1;
        if (n > killed * 50 + 60) await new Promise((resolve) => setTimeout(resolve, 20)); // do not run ahead of the kills
      }
    };
    await Promise.all(Array.from({ length: lanes }, (_, first) => lane(first)));
  };

  const kill = async (): Promise<void> => {
    while (killed < kills) {
      // Nor may the kills run ahead of the messages: each finds some arriving.
      while (taken < killed * 50) await new Promise((resolve) => setTimeout(resolve, 5));
      await killOnce();
    }
  };
  await Promise.all([send(), kill()]);

  const deadline = Date.now() + 60_000 + messages * 20;
  while (new Set(slack.messages.map((one) => one.thread_ts)).size < messages && Date.now() < deadline) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  await new Promise((resolve) => setTimeout(resolve, 1_500)); // a second reply to something would come now
  expect(await bot?.stop()).toBe(0);

  const perThread = new Map<string, number>();
  for (const { thread_ts = '' } of slack.messages) perThread.set(thread_ts, (perThread.get(thread_ts) ?? 0) + 1);
  const wrong = Array.from({ length: messages }, (_, n) => threadOf(n)).filter((thread) => perThread.get(thread) !== 1);
  expect(wrong).toEqual([]);
  expect(perThread.size).toBe(messages);

  const store = openStore({ path });
  expect(store.waiting()).toEqual([]);
  for (let n = 0; n < messages; n += 1) {
    const key = { workspace: 'T1', channel: `C${n % channels}`, thread: threadOf(n) };
    const stated = store.entries(key).filter((entry) => entry.kind === 'stated');
    const { lines } = store.thread(key).state;
    if (stated.length !== 1 || lines.length !== 1 || lines[0]?.count !== 1 + (n % 90)) throw new Error(`message ${n} was not stored once`);
  }
  store.close();
  const check = spawnSync(process.execPath, ['dist/run-check-store.js', '--store', path], { encoding: 'utf8' });
  expect(check.stdout).toContain('No fault found.');
});
