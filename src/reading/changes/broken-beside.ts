// "I only made 9 not 19, and one of those is broken": a corrected count of what is made, and what is lost of it.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { goneWrong } from '../progress/losses.ts';
import type { Part } from '../text/message.ts';
import { newValues } from './new-values.ts';

// "and one of those is broken": of those that are made.
const ofThose = pattern(
  `(,|-|and|n|&|but|plus|with){1,2} (<n:count>|one) of (those|them|these|which|em|that lot) (is|are|was|were|has|have|just|got|now|also|then|'s){0,3} (${goneWrong}|broken|bust|lost|binned)`,
);
/** Those of the corrected count that are broken, and where that is said. */
const brokenOfThose = (reader: Reader, { start, end }: Part): { start: number; end: number; count: number } | undefined => {
  const match = ofThose.in(reader.tokens, start, end);
  const number = match?.kept['n']?.number;
  if (match === undefined || number?.max !== undefined || match.end < end - 1) return undefined;
  return { start: match.start, end: match.end, count: number === undefined ? 1 : Number(number.amount) };
};

export const valuesAndLoss = (reader: Reader, whole: Part): Finding[] => {
  const broken = brokenOfThose(reader, whole);
  const part = broken === undefined ? whole : { ...whole, end: broken.start };
  const findings = newValues(reader, part);
  const [only, second] = findings;
  if (broken === undefined || only === undefined || second !== undefined) return findings;
  const [fact] = only.facts ?? [];
  if (fact?.fact !== 'change' || fact.what !== 'made') return [{ start: whole.start, end: whole.end, held: true }];
  const piece = fact.piece === undefined ? {} : { piece: fact.piece };
  return [only, found(reader, broken.start, broken.end, [{ fact: 'broke', count: broken.count, ...piece }])];
};
