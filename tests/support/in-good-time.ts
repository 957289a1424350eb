// Limits of time are held where the machine is known to be quiet (BENCHBELL_TIMES=1): a slow or busy one must not fail a test of what is right.
// What never ends is caught by the runner's own patience, everywhere.

import { expect } from 'vitest';

export const timesCount = process.env['BENCHBELL_TIMES'] !== undefined;

export const inGoodTime = (milliseconds: number, limit: number): void => {
  if (timesCount) expect(milliseconds).toBeLessThan(limit);
};
