// Of several hours on one day the event's own: "pickup 9am, ceremony 2pm, sat 13 feb" is at two.

import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';
import type { TimeRead } from './clock-time.ts';

const itself = /^(service|vows|mass|starts|starting|start|begins|kickoff)$/;
const isOwn = (text: string | undefined): boolean => text !== undefined && (itself.test(text) || isOccasion(text));

/** The hour that stands beside a word for the event, where only one does; else the first. */
export const mainHour = ({ tokens }: Reader, times: readonly TimeRead[]): TimeRead | undefined => {
  if (times.length < 2) return times[0];
  const own = times.filter(
    ({ start, end }) =>
      isOwn(tokens[start]?.text) ||
      [1, 2].some(
        (by) => isOwn(tokens[start - by]?.text) && (by === 1 || /^(is|at|@|from|starts|,)$/.test(tokens[start - 1]?.text ?? '')),
      ) ||
      isOwn(tokens[end]?.text),
  );
  return own.length === 1 ? own[0] : times[0];
};
