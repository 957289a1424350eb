// A weekday alone in a thread whose day is known: "moved to the sunday", "pickup friday". The event's own week may be meant, or the coming one.

import { addDays, type Day } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { ofWhat } from './of-what.ts';

const bare = pattern('(on|the|is|for){0,2} <w:weekday>');

const weekdayOnly = ({ tokens }: Reader, read: DateRead): number | undefined => {
  const match = bare.at(tokens, read.start, read.end);
  return read.relative === true && match?.end === read.end ? Number(match.kept['w']?.means['weekday']) : undefined;
};

/** Whether a weekday that is taken back is the event's own: "not saturday" of an event on a saturday. */
export const isEventDay = (reader: Reader, read: DateRead | undefined): boolean => {
  const { eventDate } = reader.context;
  return read !== undefined && eventDate !== undefined && weekdayOnly(reader, read) === weekdayNumber(eventDate);
};

/** Whether the weekday is counted from an event's day that nobody knows: "collection is the thursday before". */
export const leansOnUnknown = (reader: Reader, read: DateRead): boolean => {
  const { tokens, context } = reader;
  if (context.eventDate !== undefined || !/^(before|after)$/.test(tokens[read.end]?.text ?? '')) return false;
  const next = tokens[read.end + 1];
  return weekdayOnly(reader, read) !== undefined && (next === undefined || next.kind !== 'word' || /^(at|by|from|around)$/.test(next.text));
};

/** The read with the weekday nearest to the event; both days where the coming one is another. What is handed over goes before the event. */
export const byEvent = (reader: Reader, read: DateRead, sure = false): DateRead => {
  const { eventDate, today } = reader.context;
  const weekday = eventDate === undefined ? undefined : weekdayOnly(reader, read);
  if (eventDate === undefined || weekday === undefined) return read;
  // "the saturday before": counted from the event's day.
  const turn = reader.tokens[read.end]?.text;
  if (turn === 'before' || turn === 'after') {
    const day = turn === 'after' ? comingWeekday(eventDate, weekday) : comingWeekday(addDays(eventDate, -8), weekday);
    return day < today ? read : { ...read, end: read.end + 1, days: [day] };
  }
  const from = addDays(eventDate, ofWhat(reader, read) === 'hand over' ? -6 : -3);
  const near: Day = comingWeekday(from, weekday, true);
  if (near < today || read.days.includes(near)) return read;
  const { why: _, ...rest } = read;
  return sure ? { ...rest, days: [near] } : { ...rest, days: [...read.days, near].sort(), why: 'which day' };
};
