// A new day told by the one it replaces: "sat 15 may, sorry the sunday", "not fri 5 feb, the day after".

import { addDays, type Day } from '../../values/day.ts';
import { byEvent } from '../dates/by-event.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';

const next = pattern("(it's|its|it is)? (the|a)? (day|night) (<b:word>) (that|it)? (instead|now|please|pls|sorry)?");
const nextDay = pattern("(it's|its|it is)? the (next|following|previous) day (instead|now|please|pls|sorry)?");

const certain = (read: DateRead | undefined): Day | undefined =>
  read === undefined || read.relative === true || read.days.length !== 1 ? undefined : read.days[0];

/** "the day after" behind the day that is taken back. */
export const dayBesideOld = ({ tokens, context }: Reader, { start, end }: Part, old: DateRead | undefined): readonly DateRead[] => {
  const day = certain(old);
  if (day === undefined) return [];
  for (let index = start; index < end; index++) {
    const beside = next.at(tokens, index, end);
    const turn = beside?.kept['b']?.text;
    const match = turn === 'after' || turn === 'before' ? beside : nextDay.at(tokens, index, end);
    if (match === undefined || (match.end < end && tokens[match.end]?.kind === 'word')) continue;
    const back = tokens.slice(match.start, match.end).some(({ text }) => /^(before|previous)$/.test(text));
    const days = [addDays(day, back ? -1 : 1)].filter((each) => each >= context.today);
    return days.length === 0 ? [] : [{ start: match.start, end: match.end, days }];
  }
  return [];
};

/** The date said last before the part, where nothing has taken it: "sat 15 may. no sorry its the sunday". */
export const dayAhead = (reader: Reader, { start }: Part): DateRead | undefined => {
  let last: DateRead | undefined;
  for (let index = 0; index < start; index++) {
    const read = dateAt(reader.tokens, index, reader.context);
    if (read === undefined || read.end > start) continue;
    if (certain(read) !== undefined && reader.free(index)) last = read;
    index = read.end - 1;
  }
  return last;
};

/** What is found, with the words of the day ahead, so that nobody keeps the day that is taken back. */
export const withDayAhead = (finding: Finding, ahead: DateRead | undefined, { start, end }: Part): Finding => {
  if (ahead === undefined) return finding;
  return { ...finding, start: ahead.start, takes: [...placesIn(ahead), ...(finding.takes ?? placesIn({ start, end }))] };
};

/** A weekday alone is the one nearest to the day it replaces; three days off either may be meant. */
export const nearestTo = (reader: Reader, read: DateRead, old: DateRead | undefined): DateRead => {
  const day = certain(old);
  if (day === undefined) return read;
  const near = byEvent({ ...reader, context: { ...reader.context, eventDate: day } }, { ...read, days: [] }, true);
  const [found] = near.days;
  if (found === undefined || addDays(day, 3) > found === addDays(day, -3) < found) return found === undefined ? read : near;
  const other = found > day ? addDays(found, -7) : addDays(found, 7);
  return { ...near, days: [found, other].filter((each) => each >= reader.context.today).sort(), why: 'which day' };
};
