// One attempt to post one reply, and what is recorded of it. The attempt is recorded as begun before the network is touched, so that
// a crash in between leaves a mark; a marked reply is looked for first, because posting it again could say it twice.

import type { Clock, Posted, Poster, QueuedReply, Store } from '../assistant/ports.ts';
import { backOff, givenUpAfter } from './back-off.ts';
import { type Log, reasonOf } from './log.ts';

export interface PostOnceOptions {
  readonly store: Pick<Store, 'begin' | 'posted' | 'postpone' | 'giveUp'>;
  readonly poster: Poster;
  readonly clock: Clock;
  readonly log: Log;
  readonly postWithin: number;
  /** Milliseconds between two tries to record what became of a post while the store is in trouble. */
  readonly recordEvery: number;
  /** No more tries after this. */
  readonly stopped: () => boolean;
}

export interface Attempt {
  readonly outcome: Posted['outcome'] | 'nothing';
  readonly wait: number; // milliseconds the channel should rest, for 'later'
}

/** Throws only when the store does. */
export const postOnce = async (options: PostOnceOptions, queued: QueuedReply): Promise<Attempt> => {
  const { store, poster, clock, log, postWithin } = options;
  const record = (id: string, work: () => void): Promise<void> => untilRecorded(options, id, work);
  const start = clock.now();
  const reply = store.begin(queued.id, start);
  if (!reply) return { outcome: 'nothing', wait: 0 };
  const { id } = reply;
  const result = await within(postWithin, attempt(poster, reply));
  const now = clock.now();
  const line = { what: 'reply', id, milliseconds: now - start } as const;

  if (result.outcome === 'posted') {
    await record(id, () => store.posted(id, result.hostId, now));
    log.info({ ...line, outcome: 'posted' });
    return { outcome: 'posted', wait: 0 };
  }
  const tooLate = now - (reply.firstTriedAt ?? start) >= givenUpAfter;
  if (result.outcome === 'refused' || tooLate) {
    await record(id, () => store.giveUp(id, result.reason, now));
    log.warn({ ...line, outcome: 'given up', reason: result.reason });
    return { outcome: 'refused', wait: 0 };
  }
  const wait = Math.max(result.afterMilliseconds, backOff(reply.attempts));
  await record(id, () => store.postpone(id, now + wait, result.reason, result.unsure === true));
  log.warn({ ...line, outcome: 'postponed', reason: result.reason });
  return { outcome: 'later', wait: result.afterMilliseconds };
};

/**
 * A full disk must not make us forget that a reply was posted, nor hold up its thread until the next start: tried until it is recorded or we
 * stop. Unrecorded, it is looked for after the next start.
 */
const untilRecorded = async ({ log, recordEvery, stopped }: PostOnceOptions, id: string, work: () => void): Promise<void> => {
  for (let tries = 1; ; tries += 1) {
    try {
      work();
      return;
    } catch (error) {
      if (tries === 1) log.error({ what: 'reply', id, outcome: 'not recorded yet', reason: reasonOf(error) });
      if (stopped()) throw error;
    }
    await new Promise((resolve) => setTimeout(resolve, recordEvery).unref());
    if (stopped()) return;
  }
};

/** An update in place may simply be made again; a new post must not. */
const attempt = async (poster: Poster, reply: QueuedReply): Promise<Posted> => {
  try {
    const arrived = reply.interrupted && reply.replaces === undefined ? await poster.find(reply) : undefined;
    if (arrived !== undefined) return { outcome: 'posted', hostId: arrived };
  } catch (error) {
    return { outcome: 'later', afterMilliseconds: 0, reason: reasonOf(error), unsure: true };
  }
  try {
    return await poster.post(reply);
  } catch (error) {
    return { outcome: 'later', afterMilliseconds: 0, reason: reasonOf(error), unsure: true };
  }
};

const within = async (milliseconds: number, posting: Promise<Posted>): Promise<Posted> => {
  let timer: NodeJS.Timeout | undefined;
  const lost = new Promise<Posted>((resolve) => {
    const answer = { outcome: 'later', afterMilliseconds: 0, reason: 'no answer in time', unsure: true } as const;
    timer = setTimeout(() => resolve(answer), milliseconds);
  });
  const result = await Promise.race([posting, lost]);
  clearTimeout(timer);
  return result;
};
