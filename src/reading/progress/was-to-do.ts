// What there was to make, told beside what is left of it: in "had 30 to do, 11 left" eleven are left, and thirty were.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';

const form = pattern(
  "(we|i|she|he|they|i'd|we'd|there)? (had|were|began with|started with|started on|started out with) (about|over|nearly)? <count> (of them)? (<material>)? (<piece>)? (to do|to make|to wire|to tape|to finish|to get through)",
);

export const wasToDo = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part): Finding[] => {
    const match = part.asked ? undefined : form.at(reader.tokens, part.start, part.end);
    return match === undefined ? [] : [{ start: match.start, end: match.end, held: true }];
  });
