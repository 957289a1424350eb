// The promise that matters most: a process may be killed at any moment, and after the next start every message has had its one effect and its
// one reply. First every moment of a day is tried, by going on from a copy of the files as they were then, which is all that a killed process
// leaves. Then real processes are killed with SIGKILL; BENCHBELL_KILLS sets at how many random moments (6 when left out).

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { checkStore } from '../../src/store/check-store.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { expectedOf } from '../support/busy-day.ts';
import { workADay } from '../support/work-a-day.ts';
import { key } from './builders.ts';
import { newFolder, newPath } from './in-folder.ts';

interface Line {
  readonly hostId: string;
  readonly text: string;
  readonly update: boolean;
}

/** Every message stored once with its newest wording, answered by one post that shows it, and the database sound. */
const expectAWholeDay = (path: string, deliveries: number): void => {
  const store = openStore({ path, powerSafe: false });
  expect(store.waiting()).toEqual([]);
  expect(store.unsent(Number.MAX_SAFE_INTEGER)).toEqual([]);
  expect(checkStore(store.database, store.folds).faults).toEqual([]);
  const entries = ['t0', 't1', 't2'].flatMap((thread) => store.entries(key(thread)));
  const revisions = entries.map((entry) => `${entry.message} ${entry.revision}`);
  expect(revisions).toHaveLength(deliveries);
  expect(new Set(revisions).size).toBe(deliveries);
  store.close();

  const posts = readFileSync(`${path}.chat`, 'utf8')
    .trim()
    .split('\n')
    .map((line): Line => JSON.parse(line));
  const created = posts.filter((post) => !post.update).map((post) => post.hostId);
  expect(new Set(created).size).toBe(created.length);
  const shown = new Map(posts.map((post) => [post.hostId, post.text]));
  expect([...shown.values()].toSorted()).toEqual([...expectedOf(deliveries).values()].toSorted());
};

const theProcessIsDead = (path: string): void => {
  const db = new Database(path);
  db.exec('DELETE FROM lease');
  db.close();
};

it('a process killed at any step of a day is made good by the next start', { timeout: 120_000 }, async () => {
  const deliveries = 8;
  const folder = newFolder();
  const path = join(folder, 'loft.db');
  const frozen: string[] = [];
  const freeze = (): void => {
    const copy = join(folder, `frozen-${frozen.length}.db`);
    for (const end of ['', '-wal', '.chat', '.acknowledged']) if (existsSync(path + end)) copyFileSync(path + end, copy + end);
    frozen.push(copy);
  };
  await workADay({ path, deliveries, step: freeze });
  expectAWholeDay(path, deliveries);
  expect(frozen.length).toBeGreaterThan(100);
  for (const copy of frozen) {
    theProcessIsDead(copy);
    await workADay({ path: copy, deliveries, step: () => undefined });
    expectAWholeDay(copy, deliveries);
  }
});

describe('a real process', () => {
  const deliveries = 16;
  const childScript = new URL('../support/store-child.ts', import.meta.url).pathname;

  /** Works until the day is done, or the step to die at comes (0: never), or `killAfter` milliseconds have passed. */
  const work = async (path: string, dieAt = 0, killAfter?: number): Promise<'done' | 'killed'> => {
    const args = ['--import', 'tsx', childScript, 'work-a-day', path, String(deliveries), String(dieAt)];
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'inherit', 'inherit'] });
    const timer = killAfter === undefined ? undefined : setTimeout(() => child.kill('SIGKILL'), killAfter);
    const [code, signal] = (await once(child, 'exit')) as [number | null, string | null];
    clearTimeout(timer);
    if (signal === 'SIGKILL') return 'killed';
    expect(code).toBe(0);
    return 'done';
  };

  it('killed again and again, each time a little later, loses and doubles nothing', { timeout: 120_000 }, async () => {
    const path = newPath();
    for (const dieAt of [2, 5, 7, 12, 13, 14, 15, 29]) expect(await work(path, dieAt)).toBe('killed');
    expect(await work(path)).toBe('done');
    expectAWholeDay(path, deliveries);
  });

  const kills = Number(process.env['BENCHBELL_KILLS'] ?? 6);
  it(`killed at ${kills} random moments loses and doubles nothing`, { timeout: 60_000 + kills * 5000 }, async () => {
    let left = kills;
    while (left > 0) {
      const path = newPath();
      // Dies at a random step, or is killed from outside at a random time, whichever comes first.
      while (left > 0 && (await work(path, 1 + Math.floor(Math.random() * 60), 200 + Math.random() * 1500)) === 'killed') left -= 1;
      if (left === 0) await work(path);
      expectAWholeDay(path, deliveries);
    }
  });
});
