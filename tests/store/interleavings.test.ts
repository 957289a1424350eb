// Any order of receiving, receiving again, handling, posting, losing answers and crashing: each message has one stored effect and one reply.

import { copyFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { QueuedReply } from '../../src/assistant/ports.ts';
import { checkStore } from '../../src/store/check-store.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { deliveryNumber, expectedOf, factsOf, replyTo } from '../support/busy-day.ts';
import { key, outcome } from './builders.ts';
import { newFolder } from './in-folder.ts';

const now = Date.UTC(2027, 0, 20);
const doings = [
  'receive',
  'receive again',
  'handle',
  'handle twice',
  'begin',
  'arrive',
  'record',
  'lose the answer',
  'fail',
  'crash',
] as const;

/** The bot and everything around it, one doing at a time. */
class World {
  store: OpenStore;
  received = 0;
  readonly shown = new Map<string, string>(); // the chat host's messages: host id -> text
  readonly createdBy = new Map<string, string>(); // reply id -> host id
  private underWay: { readonly reply: QueuedReply; hostId?: string }[] = [];
  private path: string;
  private crashes = 0;
  private readonly folder: string;

  constructor(folder: string) {
    this.folder = folder;
    this.path = join(folder, 'loft.db');
    this.store = openStore({ path: this.path, powerSafe: false });
  }

  receive(): void {
    expect(this.store.receive(deliveryNumber(this.received), `d${this.received}`)).toBe('new');
    this.received += 1;
  }

  receiveAgain(): void {
    if (this.received === 0) return;
    const n = this.received - 1;
    expect(this.store.receive(deliveryNumber(n), `d${n}`)).toBe('repeat');
    expect(this.store.receive(deliveryNumber(n >> 1), `another delivery of ${n >> 1}`)).toBe('repeat');
  }

  handle(times: number): void {
    const [next] = this.store.waiting(1);
    if (!next) return;
    const answered = outcome(this.store, next, factsOf(next), replyTo(next));
    for (let n = 0; n < times; n += 1) expect(this.store.commit(answered)).toBe('stored');
  }

  begin(): void {
    const [next] = this.store.unsent(now);
    const reply = next && this.store.begin(next.id, now);
    if (!reply) return;
    const found = reply.interrupted && !reply.replaces ? this.createdBy.get(reply.id) : undefined;
    if (found) this.store.posted(reply.id, found, now);
    else this.underWay.push({ reply });
  }

  arrive(): void {
    const post = this.underWay.find((each) => each.hostId === undefined);
    if (!post) return;
    const [block] = post.reply.reply.blocks;
    post.hostId = post.reply.replaces ?? `h${this.createdBy.size}`;
    if (!post.reply.replaces) {
      expect(this.createdBy.has(post.reply.id)).toBe(false); // never said twice
      this.createdBy.set(post.reply.id, post.hostId);
    }
    this.shown.set(post.hostId, block?.block === 'answer' ? (block.line[0]?.text ?? '') : '');
  }

  end(how: 'record' | 'lose the answer' | 'fail'): void {
    const post = this.underWay.find((each) => (each.hostId === undefined) === (how === 'fail'));
    if (!post) return;
    this.underWay = this.underWay.filter((each) => each !== post);
    if (how === 'record') this.store.posted(post.reply.id, post.hostId ?? '', now);
    else this.store.postpone(post.reply.id, now, how, how === 'lose the answer');
  }

  /** Goes on from the files as they are, in a new process's place. */
  crash(): void {
    this.crashes += 1;
    const copy = join(this.folder, `after-crash-${this.crashes}.db`);
    for (const end of ['', '-wal']) if (existsSync(this.path + end)) copyFileSync(this.path + end, copy + end);
    this.store.close();
    const db = new Database(copy);
    db.exec('DELETE FROM lease');
    db.close();
    this.path = copy;
    this.store = openStore({ path: copy, powerSafe: false });
    this.underWay = [];
  }

  do(doing: (typeof doings)[number]): void {
    if (doing === 'receive') this.receive();
    else if (doing === 'receive again') this.receiveAgain();
    else if (doing === 'handle') this.handle(1);
    else if (doing === 'handle twice') this.handle(2);
    else if (doing === 'begin') this.begin();
    else if (doing === 'arrive') this.arrive();
    else if (doing === 'crash') this.crash();
    else this.end(doing);
  }

  finish(): void {
    while (this.store.waiting(1).length > 0) this.handle(1);
    for (let left = 1000; left > 0 && (this.store.unsent(now).length > 0 || this.underWay.length > 0); left -= 1) {
      this.begin();
      this.arrive();
      this.end('record');
    }
  }
}

it('whatever happens in whatever order, each message is stored once and answered once, with its newest wording', () => {
  // Receiving and the steps of a post come up more often than crashes, or no day would get anywhere.
  const doing = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom('receive', 'handle', 'begin', 'arrive', 'record' as const) },
    { weight: 1, arbitrary: fc.constantFrom(...doings) },
  );
  fc.assert(
    fc.property(fc.array(doing, { maxLength: 80, size: 'max' }), (day) => {
      const world = new World(newFolder());
      for (const each of day) world.do(each as (typeof doings)[number]);
      world.finish();
      const entries = ['t0', 't1', 't2'].flatMap((thread) => world.store.entries(key(thread)));
      expect(entries.map((entry) => `${entry.message} ${entry.revision}`).toSorted()).toEqual(
        Array.from({ length: world.received }, (_, n) => `${deliveryNumber(n).id} ${deliveryNumber(n).revision}`).toSorted(),
      );
      expect([...world.shown.values()].toSorted()).toEqual([...expectedOf(world.received).values()].toSorted());
      expect(checkStore(world.store.database, world.store.folds).faults).toEqual([]);
      world.store.close();
    }),
    { numRuns: 50 },
  );
});
