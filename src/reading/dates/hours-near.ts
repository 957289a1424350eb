// The hours that stand near an event's days: "ceremony 2pm sat 13 feb", "fri 26 feb, we deliver by 11, ceremony 2".

import type { Reader } from '../phrase.ts';
import { mayBeHour, partOfDay, type TimeRead, timeAt } from './clock-time.ts';
import type { DateRead } from './date-read.ts';
import { isHandsHour } from './hands-there.ts';
import { timeAhead } from './hour-ahead.ts';

/** Whether an hour here would stand beside the day: "fri 26 feb, we deliver by 11, ceremony 2". */
const isBeside = ({ tokens }: Reader, index: number, read: DateRead): boolean => {
  if (index >= read.end) {
    const off = index - read.end;
    return off <= 5 || (off <= 12 && [0, 1, 2].some((by) => /^(ceremony|vows|service|mass)$/.test(tokens[index - by]?.text ?? '')));
  }
  const ahead = read.start - index;
  if (ahead < 1 || ahead > 7) return false;
  return tokens[index]?.text === 'from' || (ahead <= 6 && partOfDay.at(tokens, index, tokens.length) !== undefined);
};

// "the gate shuts at nine", "bar closes at 11": when one has to be gone.
const shutting = /^(shut|shuts|shutting|close|closes|closing|lock|locks|locked)$/;
const isOfDoors = ({ tokens }: Reader, index: number): boolean => {
  const led = [index, index - 1].find((at) => /^(at|by|from|till|until)$/.test(tokens[at]?.text ?? ''));
  return led !== undefined && shutting.test(tokens[led - 1]?.text ?? '');
};

/** The hours said near the days; a bare number only where it is certain that the day is the event's. */
export const hoursNear = (reader: Reader, reads: readonly DateRead[], confident: boolean): readonly TimeRead[] => {
  const times: TimeRead[] = [];
  for (let index = 0; index < reader.tokens.length; index++) {
    if (!mayBeHour(reader.tokens, index) || !reader.free(index) || reads.some((read) => read.start <= index && index < read.end)) continue;
    if (isOfDoors(reader, index)) continue;
    const beside = confident && reads.some((read) => isBeside(reader, index, read));
    const time = timeAt(reader, index, beside) ?? (confident ? timeAhead(reader, index, reads) : undefined);
    if (time !== undefined && !isHandsHour(reader, time.start, reads)) times.push(time);
  }
  return times;
};
