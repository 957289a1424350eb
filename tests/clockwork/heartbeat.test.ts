// A line an hour, with what was done since the last.

import { expect, it, vi } from 'vitest';
import { type Beat, startHeartbeat } from '../../src/clockwork/heartbeat.ts';

it('counts from beat to beat, and falls silent when stopped', () => {
  vi.useFakeTimers({ now: 0 });
  const beats: Beat[] = [];
  const heart = startHeartbeat({ now: () => Date.now() }, (beat) => beats.push(beat));
  heart.handled();
  heart.handled();
  heart.posted();
  vi.advanceTimersByTime(60 * 60_000);
  heart.posted();
  vi.advanceTimersByTime(60 * 60_000);
  heart.stop();
  vi.advanceTimersByTime(60 * 60_000);
  expect(beats).toEqual([
    { up: 3_600_000, handled: 2, posted: 1 },
    { up: 7_200_000, handled: 0, posted: 1 },
  ]);
  vi.useRealTimers();
});
