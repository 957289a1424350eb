// "did 14 lapels, n the ceremony's 2pm now not 1pm": work in one clause, a new hour or day in the other. What is taken back is the hour, never the work.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { workClauses } from '../progress/work-clauses.ts';
import type { Part } from '../text/message.ts';
import { dateChange } from './date-change.ts';
import { countDifference } from './differences.ts';
import { timeChange } from './time-change.ts';
import { zonesOf } from './zones.ts';

const anew = pattern('(now|not|moved|changed|pushed|brought|instead|put back|put forward)');
const hour = pattern('(<time>|<month>|<weekday>|<ordinal>|<slashed>|<count>|noon|midday)');
const breaks = /^(,|;|-|and|n|&|but|also|plus|so|btw|\()$/;
const opens = /^(,|;|-|and|n|&|but|also|plus|so|btw|oh|fyi|ps|\()$/;
const most = 8; // breaks in a sentence

const movesEvent = ({ facts }: Finding): boolean =>
  facts?.every(
    (fact) => (fact.fact === 'date' && fact.of === 'hand over') || (fact.fact === 'change' && /^(time|date)$/.test(fact.what)),
  ) === true;

const newHour = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  let { start } = part;
  while (start < part.end && opens.test(tokens[start]?.text ?? '')) start += 1;
  // "did 14, not 12, ceremony 3pm not 2pm" takes back the work as well.
  if (tokens[start]?.text === 'not' || tokens.slice(start, part.end).some(({ means }) => means['piece'] !== undefined)) return undefined;
  if (anew.in(tokens, start, part.end) === undefined || hour.in(tokens, start, part.end) === undefined) return undefined;
  const own = { ...part, start };
  // "finished 6 today, the wedding starts at 5 now not 4": today is the day of the work.
  const change = dateChange(reader, own) ?? timeChange(reader, own, zonesOf(tokens, start, part.end));
  return change !== undefined && movesEvent(change) ? { ...change, start: part.start, end: part.end } : undefined;
};

const both = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  if (anew.in(tokens, part.start, part.end) === undefined || hour.in(tokens, part.start, part.end) === undefined) return [];
  for (let index = part.start + 1, seen = 0; index < part.end - 1 && seen < most; index++) {
    if (!breaks.test(tokens[index]?.text ?? '')) continue;
    seen += 1;
    const sides = [
      { ...part, end: index },
      { ...part, start: index },
    ] as const;
    for (const [work, change] of [sides, sides.toReversed() as [Part, Part]]) {
      const moved = newHour(reader, change);
      let { start } = work;
      while (start < work.end && opens.test(tokens[start]?.text ?? '')) start += 1;
      if (moved === undefined) continue;
      const groups = workClauses(reader, { ...work, start });
      if (groups.length > 0) return [...groups.map((group) => found(reader, group.start, group.end, group.facts)), moved];
      // "ceremony 3 not 4 and 2 extra bouts"
      const more = countDifference(tokens, start, work.end);
      if (more?.match.end === work.end && more.fact !== undefined) return [found(reader, start, work.end, [more.fact]), moved];
    }
  }
  return [];
};

/** Work and the event's new hour or day, told in one sentence. */
export const workBesideHour = (reader: Reader): Finding[] =>
  anew.might(reader.tokens) && hour.might(reader.tokens)
    ? reader.untouched().flatMap((part) => (part.asked || part.end - part.start > 40 ? [] : both(reader, part)))
    : [];
