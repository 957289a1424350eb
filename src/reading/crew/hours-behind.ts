// Hours in a sentence of their own behind the hands they are for: "3 of us sat. 6 hours each".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { peopleIn } from './hands.ts';

const hoursAlone = pattern('(about)? <duration> (<each>|a head|apiece|total|<all>|between us|each of us)?');
/** The parts, with the hours of those just named in theirs. */
export const withHours = (reader: Reader, parts: readonly Part[]): Part[] => {
  const joined: Part[] = [];
  for (const part of parts) {
    const before = joined.at(-1);
    const alone = hoursAlone.at(reader.tokens, part.start, part.end)?.end === part.end;
    if (alone && before !== undefined && part.start - before.end <= 2 && peopleIn(reader, before) !== undefined)
      joined[joined.length - 1] = { ...before, end: part.end };
    else joined.push(part);
  }
  return joined;
};
