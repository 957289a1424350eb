// Turns a date that was read into facts, or into a question with the possible days as choices.

import type { Day } from '../../values/day.ts';
import { weekdayOf } from '../../values/day.ts';
import type { Problem } from '../../values/problem.ts';
import { problem } from '../../values/result.ts';
import type { Fact } from '../fact.ts';
import type { Finding, Reader, Unworded } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { DateRead } from './date-read.ts';

/** What a message means to do with a date: state it, change to it, or say when people work. */
export type WithDay = (day: Day) => Unworded;

const shown = (day: Day): string => `${weekdayOf(day)} ${day}`;

export const askDay = (reader: Reader, read: DateRead, withDay: WithDay, start = read.start, end = read.end): Ask => {
  const words = reader.words(start, end);
  return {
    about: 'date',
    why: read.why ?? 'which day',
    words: reader.words(read.start, read.end),
    choices: read.days.map((day) => ({ words: shown(day), facts: [{ ...withDay(day), words } as Fact] })),
  };
};

/** Facts when one day is meant, an ask when several may be, a problem when there is no such day or it has gone by. */
export const dateOutcome = (reader: Reader, read: DateRead, withDay: WithDay, start = read.start, end = read.end): Finding => {
  const words = reader.words(read.start, read.end);
  const [day] = read.days;
  if (day === undefined) return { start, end, problems: [problem('date-does-not-exist', { words }) satisfies Problem] };
  if (read.days.length > 1 || read.why !== undefined) return { start, end, asks: [askDay(reader, read, withDay, start, end)] };
  if (read.past === true) return { start, end, problems: [problem('date-is-past', { date: day, words })] };
  return { start, end, facts: [{ ...withDay(day), words: reader.words(start, end) } as Fact] };
};
