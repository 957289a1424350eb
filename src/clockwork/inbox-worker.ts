// Handles what waits in the inbox a little at a time, oldest first, so that ten thousand messages after a pause hold up neither Slack's
// acknowledgements nor the posting of replies. While the store is in trouble the messages wait with it.

import type { Handled } from '../assistant/handled.ts';
import type { IncomingMessage } from '../assistant/ports.ts';
import { backOff } from './back-off.ts';
import { type Log, reasonOf } from './log.ts';

export interface InboxWorkerOptions {
  /** Handles the oldest waiting message: Assistant.next. What it throws is the store's trouble, and the message still waits. */
  readonly next: (late: (message: IncomingMessage) => boolean) => Handled | undefined;
  /** Replies were queued. */
  readonly onReplies: () => void;
  readonly log: Log;
  /** Milliseconds of work before everything else has its turn. */
  readonly slice?: number;
}

export interface InboxWorker {
  /** Something was received. */
  wake(): void;
  /** Works at once, for at most this many milliseconds and one message more. True when nothing is left waiting. */
  settle(within: number): boolean;
  /** Works on for at most this many milliseconds, then stops for good. */
  stop(within: number): Promise<'drained' | 'cut short'>;
}

const usualSlice = 25;
const longestRest = 30_000; // people wait
/** Each wake of the outbox reads it, so a long queue wakes it now and then only. */
const wakeEvery = 250;

export const startInboxWorker = ({ next, onReplies, log, slice = usualSlice }: InboxWorkerOptions): InboxWorker => {
  let planned: 'no' | 'soon' | 'after trouble' = 'no';
  let timer: NodeJS.Timeout | undefined;
  let stopped = false;
  let failures = 0;
  let lastWake = 0;
  let owed = false; // replies were queued and nobody told
  let onIdle: (() => void) | undefined;
  /** Threads that waited for the store, and were not told so yet; undefined while all is well. */
  let told: Set<string> | undefined;

  const threadOf = ({ workspace, channel, thread }: IncomingMessage): string => JSON.stringify([workspace, channel, thread]);
  const isLate = (message: IncomingMessage): boolean => told !== undefined && !told.has(threadOf(message));

  const one = (): boolean => {
    const start = performance.now();
    const handled = next(isLate);
    if (!handled) return false;
    const { message, as, reply } = handled;
    const milliseconds = Math.round((performance.now() - start) * 10) / 10;
    log.info({ what: 'message', id: `${message.channel}/${message.id}`, outcome: as, milliseconds });
    if (reply) {
      owed = true;
      told?.add(threadOf(message));
    }
    failures = 0;
    return true;
  };

  const wakeOutbox = (evenIfLately: boolean): void => {
    if (!owed || (!evenIfLately && performance.now() - lastWake < wakeEvery)) return;
    owed = false;
    lastWake = performance.now();
    onReplies();
  };

  /** True when nothing waits any more. */
  const workFor = (milliseconds: number): boolean => {
    const end = performance.now() + milliseconds;
    try {
      do {
        if (one()) continue;
        failures = 0;
        told = undefined;
        wakeOutbox(true);
        return true;
      } while (performance.now() < end);
      wakeOutbox(false);
      return false;
    } catch (error) {
      failures += 1;
      told ??= new Set();
      log.error({ what: 'inbox', id: 'work', outcome: failures === 1 ? 'waiting' : 'still waiting', reason: reasonOf(error) });
      wakeOutbox(true);
      return false;
    }
  };

  const run = (): void => {
    planned = 'no';
    if (stopped) return;
    if (workFor(slice)) onIdle?.();
    else plan();
  };

  const plan = (): void => {
    if (stopped || planned !== 'no') return;
    planned = failures > 0 ? 'after trouble' : 'soon';
    if (failures > 0) timer = setTimeout(run, Math.min(longestRest, backOff(failures)));
    else setImmediate(run);
  };

  return {
    wake: plan,
    settle: (within) => !stopped && failures === 0 && workFor(within),
    stop: (within) =>
      new Promise((resolve) => {
        const end = (outcome: 'drained' | 'cut short') => (): void => {
          stopped = true;
          clearTimeout(timer);
          clearTimeout(deadline);
          resolve(outcome);
        };
        const deadline = setTimeout(end('cut short'), within);
        onIdle = end('drained');
        if (planned === 'after trouble') end('cut short')();
        else plan();
      }),
  };
};
