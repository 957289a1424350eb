// Shares of minutes turned into whole pieces finished per day. A piece may be begun on one day and finished on the next, and counts on the day it is finished,
// so that no day ever claims more than its minutes allow.

import { type BenchJob, slightly } from './bench-job.ts';
import type { Share } from './latest-fill.ts';

export interface PiecesOnDay extends Share {
  readonly pieces: number; // finished that day
}

/** Shares must be in order of day. */
export const wholePieces = (jobs: readonly BenchJob[], shares: readonly Share[]): readonly PiecesOnDay[] => {
  const spent = jobs.map(() => 0);
  return shares.map((share) => {
    const job = jobs[share.job] as BenchJob;
    const before = spent[share.job] ?? 0;
    const after = before + share.minutes;
    spent[share.job] = after;
    return { ...share, pieces: finished(job, after) - finished(job, before) };
  });
};

const finished = (job: BenchJob, minutes: number): number => Math.min(job.pieces, Math.floor((minutes + slightly) / job.each));
