// Whether a day is put right at all, or noted down for the first time.

import { dayToCome } from '../dates/day-to-come.ts';
import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { markers } from './change-words.ts';

// "wedding's on the 8th, pls put it in": noted down for the first time, and nothing is taken back.
const noted = pattern(
  '(put|pop|stick|bung|pencil|write|chuck|get|jot|note|mark) (it|that|this|them|us|me|the|wedding|event|party|date|job|on|<ordinal>|<plain>|<month>|<weekday>|of|for){1,4} (in|down|into|up on|on (the|our|your) (calendar|board|list|diary|book|planner|wall)) (the|our|your)? (diary|book|calendar|planner|list|please|pls)?',
);
export const marksChange = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const note = noted.in(tokens, start, end) ?? dayToCome(tokens, start, end);
  if (note === undefined) return anyIn(markers, tokens, start, end);
  return anyIn(markers, tokens, start, note.start) || anyIn(markers, tokens, note.end, end);
};
