// What waits is handled a little at a time and in order; trouble with the store is waited out, and those who waited are told once.

import { describe, expect, it, vi } from 'vitest';
import { createAssistant } from '../../src/assistant/assistant.ts';
import type { Handled } from '../../src/assistant/handled.ts';
import type { IncomingMessage } from '../../src/assistant/ports.ts';
import { startInboxWorker } from '../../src/clockwork/inbox-worker.ts';
import type { LogLine } from '../../src/clockwork/log.ts';
import { replyToText } from '../../src/reply/reply-to-text.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { isOutage, StoreTrouble } from '../../src/store/store-trouble.ts';
import { message, says, yard } from '../store/builders.ts';
import { inGoodTime } from '../support/in-good-time.ts';

const lines: LogLine[] = [];
const log = { info: (line: LogLine) => void lines.push(line), warn: () => undefined, error: (line: LogLine) => void lines.push(line) };

const handledOf = (about: IncomingMessage): Handled => ({
  message: about,
  as: 'answered',
  reading: undefined,
  reply: says('yes'),
  figures: () => ({}),
});

/** An inbox of so many messages, each of which takes a while. */
const slowInbox = (count: number, milliseconds: number) => {
  const left = Array.from({ length: count }, (_, n) => message(`m${n}`));
  const done: string[] = [];
  const next = (): Handled | undefined => {
    const about = left.shift();
    if (!about) return undefined;
    for (const end = performance.now() + milliseconds; performance.now() < end; );
    done.push(about.id);
    return handledOf(about);
  };
  return { next, done, left };
};

describe('an inbox of many messages', () => {
  it('lets everything else have its turn between slices, and keeps the order', async () => {
    const { next, done } = slowInbox(100, 2);
    const worker = startInboxWorker({ next, onReplies: () => undefined, log, slice: 10 });
    let turns = 0;
    const between = setInterval(() => {
      turns += 1;
    }, 0);
    worker.wake();
    await vi.waitFor(() => expect(done).toHaveLength(100), 60_000);
    clearInterval(between);
    expect(turns).toBeGreaterThan(10);
    expect(done).toEqual(Array.from({ length: 100 }, (_, n) => `m${n}`));
  });

  it('wakes the outbox now and then, not for each reply, and at the end', async () => {
    const { next, done } = slowInbox(200, 2);
    const wakes: number[] = [];
    const worker = startInboxWorker({ next, onReplies: () => wakes.push(1), log, slice: 5 });
    const start = performance.now();
    worker.wake();
    await vi.waitFor(() => expect(done).toHaveLength(200), 60_000);
    expect(wakes.length).toBeGreaterThanOrEqual(2);
    expect(wakes.length).toBeLessThanOrEqual(2 + (performance.now() - start) / 250);
  });

  it('is settled for a bounded time', () => {
    const { next, left } = slowInbox(1_000, 5);
    const worker = startInboxWorker({ next, onReplies: () => undefined, log });
    const start = performance.now();
    expect(worker.settle(50)).toBe(false);
    inGoodTime(performance.now() - start, 500);
    expect(left.length).toBeGreaterThan(900); // each takes 5 ms at least, so few fit in
  });

  it('is drained by a stop that has the time, and cut short by one that has not', async () => {
    const few = slowInbox(5, 1);
    expect(await startInboxWorker({ next: few.next, onReplies: () => undefined, log }).stop(60_000)).toBe('drained');
    const many = slowInbox(1_000, 5);
    expect(await startInboxWorker({ next: many.next, onReplies: () => undefined, log }).stop(60)).toBe('cut short');
    const at = many.left.length;
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(many.left.length).toBe(at);
  });
});

it('on a full disk the messages wait, nothing is half stored, and each thread is told once that it had to wait', async () => {
  const store = openStore({ path: ':memory:' });
  const clock = { now: () => Date.UTC(2027, 0, 20, 9) };
  let full = true;
  const onDisk: typeof store = {
    ...store,
    commit: (outcome) => {
      if (full) throw new StoreTrouble('disk-full', 'The disk is full.');
      return store.commit(outcome);
    },
  };
  const failures: string[] = [];
  const assistant = createAssistant({ store: onDisk, clock, settings: yard, isOutage, onFailure: (id) => void failures.push(id) });
  const worker = startInboxWorker({ next: assistant.next, onReplies: () => undefined, log });
  for (const [n, thread] of ['t1', 't1', 't2'].entries()) {
    store.receive(message(`m${n}`, { thread, addressed: true, text: `${12 + n} corsages at 30 inc` }), `d${n}`);
  }
  lines.length = 0;
  worker.wake();
  await vi.waitFor(() => expect(lines).toMatchObject([{ what: 'inbox', outcome: 'waiting', reason: 'disk-full' }]), 60_000);
  expect(store.waiting()).toHaveLength(3);
  expect(store.unsent(clock.now())).toEqual([]);
  full = false;
  await vi.waitFor(() => expect(store.waiting()).toEqual([]), 60_000);
  expect(failures).toEqual([]);
  await worker.stop(100);
  const replies = store.database.prepare<[], { thread: string; reply: string }>('SELECT thread, reply FROM outbox ORDER BY seq').all();
  const told = replies.filter(({ reply }) => replyToText(JSON.parse(reply)).includes('Sorry for the wait'));
  expect(replies).toHaveLength(3);
  expect(told.map(({ thread }) => thread)).toEqual(['t1', 't2']);
  store.close();
});

it('an outcome that cannot be stored becomes an apology, and the next message is handled', () => {
  const store = openStore({ path: ':memory:' });
  const failures: string[] = [];
  const clock = { now: () => Date.UTC(2027, 0, 20, 9) };
  const broken: typeof store = {
    ...store,
    commit: (outcome) => {
      if (outcome.entries.length > 0 && outcome.message.id === 'm0') throw new Error('a count that is not a number');
      return store.commit(outcome);
    },
  };
  const assistant = createAssistant({ store: broken, clock, settings: yard, isOutage, onFailure: (id) => void failures.push(id) });
  store.receive(message('m0', { addressed: true, text: '12 corsages at 30 inc' }), 'd0');
  store.receive(message('m1', { addressed: true, text: '14 corsages at 30 inc' }), 'd1');
  expect(assistant.work().map(({ as }) => as)).toEqual(['failed', expect.stringMatching(/stored|asked/)]);
  expect(failures).toHaveLength(1);
  store.close();
});
