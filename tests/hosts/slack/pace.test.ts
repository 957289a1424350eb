// About one message a second in a channel: docs.slack.dev/apis/web-api/rate-limits, read 2026-09.

import { expect, test } from 'vitest';
import { createPace } from '../../../src/hosts/slack/pace.ts';

test('spaces a channel’s posts by a second, and lets other channels by', async () => {
  let now = 1_000;
  const waits: number[] = [];
  const pace = createPace(
    () => now,
    async (milliseconds) => {
      waits.push(milliseconds);
    },
  );
  await pace('C1');
  await pace('C2');
  expect(waits).toEqual([]);
  await Promise.all([pace('C1'), pace('C1')]);
  expect(waits).toEqual([1_000, 2_000]);
  now += 5_000;
  await pace('C1');
  expect(waits).toHaveLength(2);
});
