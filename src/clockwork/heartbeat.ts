// A line an hour that says the bot is alive and how much it holds, so that silence in the log means something.

import type { Clock } from '../assistant/ports.ts';

export interface Beat {
  readonly up: number; // milliseconds since the start
  readonly handled: number; // messages since the last beat
  readonly posted: number; // replies since the last beat
}

export interface Heartbeat {
  handled(): void;
  posted(): void;
  stop(): void;
}

const hour = 60 * 60_000;

export const startHeartbeat = (clock: Clock, beat: (beat: Beat) => void, every = hour): Heartbeat => {
  const started = clock.now();
  let counts = { handled: 0, posted: 0 };
  const timer = setInterval(() => {
    const { handled, posted } = counts;
    counts = { handled: 0, posted: 0 };
    beat({ up: clock.now() - started, handled, posted });
  }, every).unref();
  return {
    handled: () => {
      counts.handled += 1;
    },
    posted: () => {
      counts.posted += 1;
    },
    stop: () => clearInterval(timer),
  };
};
