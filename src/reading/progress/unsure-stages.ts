// "12-13 bouts wired": how many are begun is not said, and nobody orders them.

import { allFree, type Finding, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { stageForms } from './losses.ts';

export const unsureStages = (reader: Reader, part: Part): Finding[] =>
  stageForms.flatMap((form) => {
    const match = form.in(reader.tokens, part.start, part.end);
    const unsure = match !== undefined && isRangeOrChoice(match.kept['n']?.number) && allFree(reader, match.start, match.end);
    return unsure ? [{ start: match.start, end: match.end, held: true }] : [];
  });
