// "8 ushers all told, 5 lads buttonholes 3 girls wrist corsages": those named first are the others together.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Entry, WearersRead } from './wearers-read.ts';

const whole = pattern('<count> (<word>)? <role> (,|-|\\()? (<all>|total|in total|in all|all told|altogether|between them)');

/** The list without its whole, where that is said to be one and the others make it up. */
export const withoutWhole = (tokens: readonly Token[], read: WearersRead): WearersRead => {
  const [first, ...others] = read.entries;
  if (first === undefined || others.length < 2 || others.some((entry: Entry) => entry.most !== undefined)) return read;
  if (first.count !== others.reduce((sum, { count }) => sum + count, 0)) return read;
  return [0, 1, 2].some((by) => whole.at(tokens, first.at - by, tokens.length) !== undefined)
    ? { ...read, entries: others, total: first.count }
    : read;
};
