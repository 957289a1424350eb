// The outbox pump on a real store and a pretended chat host, with a clock the test moves.
// About one message a second per channel and Retry-After: Slack developer docs, "Rate limits", docs.slack.dev/apis/web-api/rate-limits.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Posted, Poster, QueuedReply } from '../../src/assistant/ports.ts';
import type { LogLine } from '../../src/clockwork/log.ts';
import { type OutboxPump, startOutboxPump } from '../../src/clockwork/outbox-pump.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { buttonholes, message, reply, tell } from '../store/builders.ts';

const minute = 60_000;
const clock = { now: () => Date.now() };

/** A chat host that keeps what it was given, and answers as told. */
const pretendedHost = () => {
  const shown = new Map<string, string>(); // host id -> text
  const posts: { readonly id: string; readonly at: number; readonly replaces: string | undefined }[] = [];
  const answers: (Posted | 'arrives but the answer is lost' | Error)[] = [];
  const text = (out: QueuedReply): string => {
    const [block] = out.reply.blocks;
    return block?.block === 'answer' ? (block.line[0]?.text ?? '') : '';
  };
  const poster: Poster = {
    post: async (out) => {
      posts.push({ id: out.id, at: Date.now(), replaces: out.replaces });
      const answer = answers.shift();
      if (answer instanceof Error) throw answer;
      if (typeof answer === 'object' && answer.outcome !== 'posted') return answer;
      const hostId = out.replaces ?? `h${posts.length}`;
      shown.set(hostId, text(out));
      found.set(out.id, hostId);
      if (answer === 'arrives but the answer is lost') return { outcome: 'later', afterMilliseconds: 0, reason: 'timeout', unsure: true };
      return { outcome: 'posted', hostId };
    },
    find: async (out) => found.get(out.id),
  };
  const found = new Map<string, string>();
  return { poster, posts, answers, shown: () => [...shown.values()] };
};

describe('the outbox pump', () => {
  let store: OpenStore;
  let host: ReturnType<typeof pretendedHost>;
  let lines: LogLine[];
  let pumps: OutboxPump[];
  const pump = (channelPause = 1000): OutboxPump => {
    const write = (line: LogLine) => void lines.push(line);
    const log = { info: write, warn: write, error: write };
    const started = startOutboxPump({ store, poster: host.poster, clock, log, channelPause });
    pumps.push(started);
    return started;
  };
  const outcomes = () => lines.map((line) => line.outcome);

  beforeEach(() => {
    vi.useFakeTimers({ now: Date.UTC(2027, 0, 20, 9) });
    store = openStore({ path: ':memory:', powerSafe: false });
    host = pretendedHost();
    lines = [];
    pumps = [];
  });
  afterEach(async () => {
    const stopping = Promise.all(pumps.map((each) => each.stop(0)));
    await vi.advanceTimersByTimeAsync(10);
    await stopping;
    expect(vi.getTimerCount() <= 1).toBe(true); // the store's lease only
    store.close();
    vi.useRealTimers();
  });

  it('posts a reply once and writes one line about it, without its words', async () => {
    tell(store, message('m1'), [buttonholes(40)], [reply('m1', '40 buttonholes for Catriona')]);
    await pump().settled();
    await vi.advanceTimersByTimeAsync(10 * minute);
    expect(host.shown()).toEqual(['40 buttonholes for Catriona']);
    expect(host.posts).toHaveLength(1);
    expect(outcomes()).toEqual(['posted']);
    expect(JSON.stringify(lines.map(({ id: _, ...line }) => line))).not.toContain('Catriona');
  });

  it('leaves a second between two posts to one channel, and lets other channels pass', async () => {
    for (const id of ['m1', 'm2', 'm3']) tell(store, message(id), [], [reply(id)]);
    tell(store, message('p1', { channel: 'parties' }), [], [reply('p1')]);
    const start = Date.now();
    pump();
    await vi.advanceTimersByTimeAsync(5000);
    const at = (about: string) => (host.posts.find((post) => post.id.includes(` ${about} `))?.at ?? 0) - start;
    expect([at('p1'), at('m1'), at('m2'), at('m3')]).toEqual([0, 0, 1000, 2000]);
  });

  it('needs no pause for a terminal', async () => {
    for (const id of ['m1', 'm2', 'm3']) tell(store, message(id), [], [reply(id)]);
    await pump(0).settled();
    expect(host.shown()).toEqual(['answer to m1', 'answer to m2', 'answer to m3']);
  });

  it('waits as long as the host asks, for the whole channel', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2', { thread: 't2' }), [], [reply('m2')]);
    host.answers.push({ outcome: 'later', afterMilliseconds: 30_000, reason: 'ratelimited' });
    pump();
    await vi.advanceTimersByTimeAsync(29_900);
    expect(host.posts).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(3000);
    expect(host.shown().sort()).toEqual(['answer to m1', 'answer to m2']);
  });

  it('still waits as long as the host asked after a restart', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    host.answers.push({ outcome: 'later', afterMilliseconds: 30_000, reason: 'ratelimited' });
    const stopping = pump().stop(10);
    await vi.advanceTimersByTimeAsync(10);
    await stopping;
    pump();
    await vi.advanceTimersByTimeAsync(29_000);
    expect(host.posts).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(2000);
    expect(host.shown()).toEqual(['answer to m1']);
  });

  it('keeps the order of a thread when its first reply must wait', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2'), [], [reply('m2')]);
    host.answers.push({ outcome: 'later', afterMilliseconds: 5000, reason: 'ratelimited' });
    pump();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(host.shown()).toEqual(['answer to m1', 'answer to m2']);
  });

  it('tries a host that is down less and less often, loses nothing in an hour, and gives up after a day', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    const down = { outcome: 'later', afterMilliseconds: 0, reason: 'ECONNREFUSED' } as const;
    host.answers.push(...Array.from({ length: 1000 }, () => down));
    pump();
    await vi.advanceTimersByTimeAsync(60 * minute);
    expect(host.posts.length).toBeLessThan(25);
    expect(store.unsent(Date.now() + 10 * minute)).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(24 * 60 * minute);
    expect(store.unsent(Number.MAX_SAFE_INTEGER)).toEqual([]);
    expect(lines.at(-1)).toMatchObject({ outcome: 'given up', reason: 'ECONNREFUSED' });
  });

  it('says everything once the host is back after an hour', async () => {
    for (const id of ['m1', 'm2']) tell(store, message(id), [], [reply(id)]);
    let back = false;
    const { post } = host.poster;
    host.poster.post = async (out) => (back ? post(out) : { outcome: 'later', afterMilliseconds: 0, reason: 'ENOTFOUND' });
    pump();
    await vi.advanceTimersByTimeAsync(60 * minute);
    back = true;
    await vi.advanceTimersByTimeAsync(6 * minute);
    expect(host.shown()).toEqual(['answer to m1', 'answer to m2']);
  });

  it('gives up a refused reply at once and goes on with the thread', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2'), [], [reply('m2')]);
    host.answers.push({ outcome: 'refused', reason: 'channel_not_found' });
    pump();
    await vi.advanceTimersByTimeAsync(3000);
    expect(host.shown()).toEqual(['answer to m2']);
    expect(outcomes()).toEqual(['given up', 'posted']);
  });

  it('looks before it posts again when the answer to a post was lost', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    host.answers.push('arrives but the answer is lost');
    pump();
    await vi.advanceTimersByTimeAsync(5000);
    expect(host.posts).toHaveLength(1);
    expect(store.unsent(Number.MAX_SAFE_INTEGER)).toEqual([]);
  });

  it('does not post again while it cannot look', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    host.answers.push('arrives but the answer is lost');
    const { find } = host.poster;
    let looks = 0;
    host.poster.find = async (out) => {
      looks += 1;
      if (looks < 3) throw new Error('the history cannot be read');
      return find(out);
    };
    pump();
    await vi.advanceTimersByTimeAsync(minute);
    expect(looks).toBe(3);
    expect(host.posts).toHaveLength(1);
  });

  it('counts a post that never comes back as lost', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    const { post } = host.poster;
    let hangs = true;
    host.poster.post = (out) => {
      if (!hangs) return post(out);
      hangs = false;
      return new Promise(() => undefined);
    };
    pump();
    await vi.advanceTimersByTimeAsync(2 * minute);
    expect(host.shown()).toEqual(['answer to m1']);
    expect(lines[0]).toMatchObject({ outcome: 'postponed', reason: 'no answer in time' });
  });

  it('survives a host that throws', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    host.answers.push(new TypeError('a word of a person'));
    pump();
    await vi.advanceTimersByTimeAsync(5000);
    expect(host.shown()).toEqual(['answer to m1']);
    expect(lines[0]).toMatchObject({ outcome: 'postponed', reason: 'TypeError' });
  });

  it('updates the earlier reply of an edited message', async () => {
    tell(store, message('m1'), [buttonholes(40)], [reply('m1', '40 buttonholes')]);
    pump();
    await vi.advanceTimersByTimeAsync(2000);
    tell(store, message('m1', { kind: 'edit', revision: '2' }), [buttonholes(45)], [reply('m1', '45 buttonholes')]);
    await vi.advanceTimersByTimeAsync(2000);
    expect(host.shown()).toEqual(['45 buttonholes']);
    expect(host.posts.map((post) => post.replaces)).toEqual([undefined, 'h1']);
  });

  it('posts the newer wording alone when the edit comes while the first answer waits for its turn', async () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2', { thread: 't2' }), [buttonholes(40)], [reply('m2', '40 buttonholes')]);
    pump();
    await vi.advanceTimersByTimeAsync(500);
    tell(store, message('m2', { thread: 't2', kind: 'edit', revision: '2' }), [buttonholes(45)], [reply('m2', '45 buttonholes')]);
    await vi.advanceTimersByTimeAsync(3000);
    expect(host.shown()).toEqual(['answer to m1', '45 buttonholes']);
    expect(host.posts).toHaveLength(2);
  });

  describe('when stopped', () => {
    it('first posts what is due', async () => {
      for (const id of ['m1', 'm2', 'm3']) tell(store, message(id), [], [reply(id)]);
      const stopping = pump().stop(5000);
      await vi.advanceTimersByTimeAsync(5000);
      expect(await stopping).toBe('drained');
      expect(host.posts).toHaveLength(3);
    });

    it('keeps to its deadline and leaves the rest for the next start', async () => {
      for (let n = 0; n < 10; n += 1) tell(store, message(`m${n}`), [], [reply(`m${n}`)]);
      const stopping = pump().stop(3500);
      await vi.advanceTimersByTimeAsync(3500);
      expect(await stopping).toBe('cut short');
      await vi.advanceTimersByTimeAsync(minute);
      expect(host.posts).toHaveLength(4);
      pump();
      await vi.advanceTimersByTimeAsync(minute);
      expect(host.shown()).toEqual(Array.from({ length: 10 }, (_, n) => `answer to m${n}`));
    });
  });

  it('does not wait an hour when the clock is set back an hour', async () => {
    for (const id of ['m1', 'm2']) tell(store, message(id), [], [reply(id)]);
    pump();
    await vi.advanceTimersByTimeAsync(100);
    vi.setSystemTime(Date.now() - 60 * minute);
    await vi.advanceTimersByTimeAsync(3000);
    expect(host.shown()).toEqual(['answer to m1', 'answer to m2']);
  });
});
