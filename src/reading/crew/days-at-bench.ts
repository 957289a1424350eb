// Which days the hands are at the bench: one, or several that are meant alike: "fri + sat", "mon, tue and wed".

import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { meAndOne } from './crew-forms.ts';

export const dateIn = (reader: Reader, part: Part): DateRead | undefined => {
  for (let index = part.start; index < part.end; index++) {
    const read = dateAt(reader.tokens, index, reader.context);
    if (read !== undefined && read.end <= part.end && read.days.length > 0) return read;
  }
  return undefined;
};

const joint = pattern('(and|&|\\+|n|,|/){1,2} (also|then|on)?');

// "mon, tue and wed": what comes behind a day is later than it.
const behind = (next: DateRead | undefined, before: DateRead): DateRead | undefined => {
  const [last] = before.days;
  const days = next?.days.filter((day) => last !== undefined && day > last) ?? [];
  return next === undefined || days.length === 0 ? next : { ...next, days };
};

/** The days that stand beside each other, all meant alike. */
export const datesIn = (reader: Reader, part: Part): DateRead[] => {
  const days: DateRead[] = [];
  const first = dateIn(reader, part);
  // "12 bench hours left before saturday" are no hours of that day.
  if (/^(before|by)$/.test(reader.tokens[(first?.start ?? 0) - 1]?.text ?? '')) return [];
  for (let next = first; next !== undefined && next.end <= part.end; ) {
    const { end }: DateRead = next;
    const said = next.days.join();
    if (!days.some((day) => day.days.join() === said)) days.push(next);
    const joined = joint.at(reader.tokens, end, part.end)?.end ?? end;
    const besides = joined > end || reader.tokens[end]?.means['weekday'] !== undefined;
    next = besides ? behind(dateAt(reader.tokens, joined, reader.context), next) : undefined;
  }
  return days;
};

/** "two in on friday, three on saturday": another day further on, with hands of its own that were not read. */
export const anotherDay = (reader: Reader, part: Part, read: readonly DateRead[]): boolean => {
  const from = read.at(-1)?.end ?? part.end;
  const further = dateIn(reader, { ...part, start: from });
  return (
    further !== undefined &&
    reader.tokens[further.start]?.means['weekday'] !== undefined &&
    reader.tokens[further.start - 1]?.text !== 'for' &&
    read.every((day) => day.days.join() !== further.days.join())
  );
};

/** "me and jo on saturday": nothing else is said. */
export const plainPair = (reader: Reader, part: Part): boolean => {
  const match = meAndOne.at(reader.tokens, part.start, part.end);
  if (match === undefined) return false;
  const day = dateIn(reader, part);
  return day !== undefined && day.start <= match.end && day.end >= part.end - 1;
};
