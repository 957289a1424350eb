// The hour of an event whose day is known: "ceremony 3pm", "it starts at 2pm", "pick up at 11am". Where no day is known an hour alone says nothing.

import { timeAt } from '../dates/clock-time.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { stretchesBetween } from '../text/stretches-between.ts';
import type { Token } from '../text/token.ts';

// A reception has an hour of its own.
const own =
  "(ceremony|ceremony's|service|service's|vows|wedding|wedding's|event|event's|kickoff|kick off|party|party's|gala|formal|prom|christening|funeral)";
const lead = '(ok|so|and|oh|btw|fyi|the|their|her|our|its|,){0,3}';
const behind = '(is|are|now|at|@|<f:from>|starts|starting|start|begins|kicks off|time|will be|from|for|:|-|,){0,3}';
const ofEvent = [
  pattern(`${lead} ${own} ${behind}`),
  pattern(`${lead} (it|they) (<f:from>|starts|start|begins|begin|kicks off|is on|kick off) (at|@|from)?`),
  pattern(`${lead} (<f:from>|starts|start time|kick off) (is|at|@|:|-)?`),
];
const handing =
  '(pickup|pick-up|collection|delivery|handover|hand-over|(pick|picking) up|(hand|handing) over|(she|he|they|client|bride|we) (collects|collect|picks up|pick up|deliver|delivers|hand over)|(collecting|delivering|handing over))';
const ofHandOver = pattern(`${lead} (client|bride)? ${handing} ${behind} (by)?`);
const polite = /^(sharp|please|pls|thanks|ta|x|\.|ok|now|instead)$/;

/** An hour and nothing else behind what it is of. */
const hourBehind = (reader: Reader, from: number, end: number): string | undefined => {
  // "at 3": the form may have taken the word that makes it an hour.
  for (const start of [from, from - 1]) {
    const time = timeAt(reader, start, true);
    if (time === undefined || time.end <= from) continue;
    let index = time.end;
    while (index < end && polite.test(reader.tokens[index]?.text ?? '')) index += 1;
    return index === end ? time.time : undefined;
  }
  return undefined;
};

const cuts = (token: Token | undefined): boolean => token?.text === ',' || token?.kind === 'line';

const find = (reader: Reader): Finding[] => {
  if (reader.context.eventDate === undefined) return [];
  const { tokens } = reader;
  return reader.untouched().flatMap((part) => {
    if (part.asked) return [];
    const read = stretchesBetween(reader.tokens, part, cuts).map(({ start, end }) => {
      for (const form of [...ofEvent, ofHandOver]) {
        const match = form.at(tokens, start, end);
        // "from 9" is a price sooner than an hour.
        const isPriced = !/^start/.test(match?.kept['f']?.text ?? 'start');
        const to = match === undefined || match.end === start || isPriced ? undefined : hourBehind(reader, match.end, end);
        const of = form === ofHandOver ? { of: 'hand over' as const } : {};
        if (to !== undefined) return found(reader, start, end, [{ fact: 'change', what: 'time', to, ...of }]);
      }
      return undefined;
    });
    // Beside anything else the hour may be of that.
    return read.every((finding) => finding !== undefined) ? read : [];
  });
};

export const hourAlone: Phrase = { name: 'hour alone', examples: [], find };
