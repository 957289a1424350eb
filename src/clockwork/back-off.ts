// How long to wait before a failed post is tried again: twice as long each time, up to five minutes, and given up after a day.

const first = 1000;
const longest = 5 * 60_000;

/** Milliseconds after this many failures in a row. */
export const backOff = (failures: number): number => Math.min(first * 2 ** Math.max(0, failures - 1), longest);

export const givenUpAfter = 24 * 60 * 60_000;
