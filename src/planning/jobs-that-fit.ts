// The part of a load that can be finished: whole pieces only, and of a mixed piece no more finished than there are bases for.

import { type BenchJob, slightly } from './bench-job.ts';

/** The jobs in the same order, each cut down to the pieces that fit, given the minutes of each that fit nowhere. */
export const jobsThatFit = (jobs: readonly BenchJob[], short: readonly number[]): readonly BenchJob[] => {
  const lacking = new Map<string, number>(); // bases that fit nowhere, by line
  return jobs.map((job, index) => {
    const line = `${job.event}/${job.line}`;
    const missing = short[index] ?? 0;
    const alone = missing > slightly ? Math.max(0, Math.floor((job.minutes - missing + slightly) / job.each)) : job.pieces;
    const pieces = job.stage === 'finish' ? Math.min(alone, job.pieces - (lacking.get(line) ?? 0)) : alone;
    if (job.stage === 'base') lacking.set(line, job.pieces - pieces);
    return pieces === job.pieces ? job : { ...job, pieces, minutes: pieces * job.each };
  });
};
