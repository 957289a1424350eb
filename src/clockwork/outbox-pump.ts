// Posts what waits in the outbox: one post at a time per channel with a pause after each, threads in order (the store sees to that),
// and everything that fails for now tried again later. It looks again whenever it is woken, and once a second by itself.

import type { Clock, Poster, QueuedReply, Store } from '../assistant/ports.ts';
import { backOff } from './back-off.ts';
import { type Log, reasonOf } from './log.ts';
import { postOnce } from './post-once.ts';

export interface OutboxPumpOptions {
  readonly store: Pick<Store, 'unsent' | 'begin' | 'posted' | 'postpone' | 'giveUp'>;
  readonly poster: Poster;
  readonly clock: Clock;
  readonly log: Log;
  /** Milliseconds between two posts to one channel. Slack allows about one a second; a terminal needs no pause. */
  readonly channelPause: number;
  /** Milliseconds between two looks when nothing wakes it. */
  readonly lookEvery?: number;
  /** Milliseconds after which a post that has not come back counts as lost. */
  readonly postWithin?: number;
}

export interface OutboxPump {
  /** Something was queued. */
  wake(): void;
  /** Resolves when nothing is being posted and nothing is due. */
  settled(): Promise<void>;
  /** Posts what is due, for at most this many milliseconds, then stops. Whatever is left is posted after the next start. */
  stop(within: number): Promise<'drained' | 'cut short'>;
}

interface Lane {
  busy: boolean;
  freeAt: number;
  since: number; // when freeAt was set: if the clock now shows less, it was set back and the wait is over
  failures: number;
}

const fewReplies = 20; // read in no time
const longestPause = 50; // milliseconds

export const startOutboxPump = ({
  store,
  poster,
  clock,
  log,
  channelPause,
  lookEvery = 1000,
  postWithin = 60_000,
}: OutboxPumpOptions): OutboxPump => {
  const lanes = new Map<string, Lane>();
  let posting = 0;
  let stopped = false;
  let soon: NodeJS.Timeout | undefined;
  let lookedAt = 0;
  let lookPause = 0;
  let timer: NodeJS.Timeout | undefined;
  let onSettled: (() => void)[] = [];

  const laneOf = ({ to }: QueuedReply): Lane => {
    const name = JSON.stringify([to.workspace, to.channel]);
    const lane = lanes.get(name) ?? { busy: false, freeAt: 0, since: 0, failures: 0 };
    lanes.set(name, lane);
    return lane;
  };

  const post = async (lane: Lane, reply: QueuedReply): Promise<void> => {
    lane.busy = true;
    posting += 1;
    let pause = channelPause;
    try {
      const { outcome, wait } = await postOnce(
        { store, poster, clock, log, postWithin, recordEvery: lookEvery, stopped: () => stopped },
        reply,
      );
      lane.failures = outcome === 'later' ? lane.failures + 1 : 0;
      if (outcome === 'later') pause = Math.max(pause, wait, backOff(lane.failures));
      if (outcome === 'nothing') pause = 0;
    } catch (error) {
      // The store failed before anything was posted: the reply still waits.
      log.error({ what: 'reply', id: reply.id, outcome: 'failed', reason: reasonOf(error) });
      pause = Math.max(pause, backOff(1));
    }
    lane.since = clock.now();
    lane.freeAt = lane.since + pause;
    lane.busy = false;
    posting -= 1;
    wake();
  };

  const due = (): readonly QueuedReply[] => {
    try {
      return store.unsent(clock.now());
    } catch (error) {
      log.error({ what: 'outbox', id: 'look', outcome: 'failed', reason: reasonOf(error) });
      return [];
    }
  };

  /** Each look reads the queue, so that many posts ending at about the same time share one. */
  const wake = (): void => {
    const rested = clock.now() - lookedAt;
    if (rested >= 0 && rested < lookPause) soon ??= setTimeout(look, lookPause - rested);
    else look();
  };

  const look = (): void => {
    clearTimeout(timer);
    clearTimeout(soon);
    soon = undefined;
    if (stopped) return;
    const now = clock.now();
    let next = lookEvery;
    const replies = due();
    lookedAt = clock.now();
    lookPause = replies.length > fewReplies ? Math.min(longestPause, replies.length) : 0;
    for (const reply of replies) {
      const lane = laneOf(reply);
      if (lane.busy) continue;
      if (lane.since <= now && now < lane.freeAt) next = Math.min(next, lane.freeAt - now);
      else void post(lane, reply);
    }
    timer = setTimeout(look, next);
    if (posting > 0 || replies.length > 0) return;
    for (const resolve of onSettled.splice(0)) resolve();
  };

  const settled = (): Promise<void> =>
    new Promise((resolve) => {
      onSettled.push(resolve);
      look();
    });

  look();
  return {
    wake,
    settled,
    stop: async (within) => {
      let deadline: NodeJS.Timeout | undefined;
      const cut = new Promise<'cut short'>((resolve) => {
        deadline = setTimeout(() => resolve('cut short'), within);
      });
      const ended = await Promise.race([settled().then(() => 'drained' as const), cut]);
      clearTimeout(deadline);
      stopped = true;
      clearTimeout(timer);
      onSettled = [];
      return ended;
    },
  };
};
