// "wedding 13 march, collecting the day before at 4": a hand-over told by the event's day, said here or known in the thread.

import { addDays } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';
import type { DateRead } from './date-read.ts';
import { ofWhat } from './of-what.ts';

const form = pattern(
  "(pickup|pick-up|collection|collecting|collects|collect|delivery|deliver|delivers|delivering|handover|pickup's|collection's|delivery's|(pick|picks|picking) up|(drop|drops|dropping) off|(hand|hands|handing) over) (is|will be|for|on|now|at|the|a|them|it|these|everything|from|by|to|,|-|:|<time>){0,4} (<b:word>) before",
);
const spoken = /^(day|night|evening|afternoon|arvo)$/;
const opens = /^(the|on|a)$/;

// "they're picking up the day before, 12 feb": with no event named, that is the day itself said again.
const saidAgain = ({ tokens }: Reader, end: number, whole: DateRead | undefined): boolean =>
  whole?.start === end + 1 && /^[,(:=-]$/.test(tokens[end]?.text ?? '') && !tokens.some(({ text }) => isOccasion(text));

/** The days with the one before the event's, where something is handed over then. */
export const withDayBefore = (reader: Reader, reads: readonly DateRead[]): readonly DateRead[] => {
  const [early] = dayBefore(reader, reads);
  if (early === undefined) return reads;
  const again = reads.find((read) => saidAgain(reader, early.end, read));
  const all = again === undefined ? [...reads, early] : [...reads.filter((read) => read !== again), { ...again, start: early.start }];
  return all.toSorted((a, b) => a.start - b.start);
};

const dayBefore = (reader: Reader, reads: readonly DateRead[]): readonly DateRead[] => {
  const { tokens, context } = reader;
  const match = form.in(tokens, 0, tokens.length);
  const word = match?.kept['b'];
  const next = tokens[match?.end ?? tokens.length];
  if (match === undefined || word === undefined || !spoken.test(word.text)) return [];
  // "the day before christmas" is a day of its own.
  if (reads.some((read) => read.start < match.end && read.end > match.end - 2) || next?.means['month'] !== undefined) return [];
  const [whole, another] = reads.filter((read) => read.days.length === 1 && ofWhat(reader, read) === undefined);
  if (another !== undefined || (whole === undefined && reads.length > 0)) return [];
  const day = whole?.days[0] ?? context.eventDate;
  if (day === undefined || addDays(day, -1) < context.today) return [];
  const start = opens.test(tokens[match.end - 3]?.text ?? '') ? match.end - 3 : match.end - 2;
  const read: DateRead = {
    start,
    end: match.end,
    days: [addDays(day, -1)],
    ...(whole?.relative === undefined ? {} : { relative: whole.relative }),
    ...(whole?.yearAssumed === undefined ? {} : { yearAssumed: whole.yearAssumed }),
  };
  return ofWhat(reader, read) === 'hand over' ? [read] : [];
};
