// "wedding friday 19 march, groom, best man, 3 groomsmen all bouts": the day before a list of wearers, or behind it, is no part of the list.

import { timeAt } from '../dates/clock-time.ts';
import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { anyOccasion } from '../words/occasion-words.ts';

const divides = /^(,|-|:|;)$/;
const lead = pattern(`(ok|so|hi|new|for|the|a|our|their|and|it's|its|is|on|date|date's|day|event|${anyOccasion}|of|,|:|-){1,6}`);

/** Where the day that begins here ends, with its hour and nothing else. */
const dayEnd = (reader: Reader, start: number, end: number): number | undefined => {
  const { tokens, context } = reader;
  const from = lead.at(tokens, start, end)?.end ?? start;
  for (const at of from === start ? [start] : [from, start]) {
    const day = dateAt(tokens, at, context);
    if (day === undefined || day.end > end) continue;
    const hour = day.end < end ? timeAt(reader, day.end, true) : undefined;
    return hour === undefined || hour.end > end ? day.end : hour.end;
  }
  return undefined;
};

/** The part without such a day at either side of it. */
export const withoutDay = (reader: Reader, part: Part): Part => {
  const { tokens } = reader;
  const first = dayEnd(reader, part.start, part.end);
  const next = first === undefined || first >= part.end - 1 ? undefined : tokens[first];
  const start =
    first === undefined || next === undefined
      ? part.start
      : divides.test(next.text)
        ? first + 1
        : next.means['role'] === undefined
          ? part.start
          : first;
  for (let at = part.end - 2; at > start; at--) {
    if (!divides.test(tokens[at]?.text ?? '')) continue;
    return { ...part, start, end: dayEnd(reader, at + 1, part.end) === part.end ? at : part.end };
  }
  return { ...part, start };
};
