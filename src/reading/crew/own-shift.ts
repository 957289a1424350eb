// When the one who writes is at the bench: "im free fri 2 til 6", "i'm in saturday 9-1", "can do 4 hrs fri".

import { dateOutcome } from '../dates/date-facts.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { dateIn } from './days-at-bench.ts';
import { hoursOf } from './pace.ts';
import { shiftHours } from './shift-hours.ts';

const opening = pattern(
  "(ok|so|hi|just|only|yes|yeah|and){0,2} (i'm|im|i am|i|i'll|i'll be|ill be|i can|i could|i can be|can|could|i've|ive|i have|i've got|ive got|i have got|got) (only|just|prob|probably|about|around){0,2} (in|free|available|avail|on|working|rostered|rostered on|around|do|work|make|spare|be in|be here|here|give it|give this|<duration>|<weekday>|tomorrow|tmrw)",
);
// Nothing else may stand beside the day and its hours: "im in fri at 9 for the fitting" is no shift.
const ofTimes =
  /^(in|on|at|from|to|til|till|until|thru|through|-|,|this|next|coming|the|for|it|of|day|hours|half|quarter|past|noon|midday|am|pm|morning|arvo|afternoon|evening|free|spare|available|only|just|about|around|working|bench|bench time|to help|help|helping|do|so|and|if|needed|thats|that's|tomorrow|tmrw|tmr|tomoz|today|hr|hrs|each|all|up|max|tops|total|in total)$/;

/** Read when the sentence says nothing but who, which day and how long. */
export const ownShift = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = opening.at(tokens, part.start, part.end);
  if (match === undefined || part.end - part.start > 16) return undefined;
  let hours: number | undefined;
  for (let index = match.end - 1; index < part.end; index++) {
    const token = tokens[index];
    if (token?.number?.form === 'duration') {
      // "3 hrs thurs and 4 hrs fri" are two shifts.
      if (hours !== undefined || hoursOf(token) === undefined) return undefined;
      hours = hoursOf(token);
    } else if (
      index >= match.end &&
      token?.number === undefined &&
      token?.means['weekday'] === undefined &&
      token?.means['month'] === undefined
    ) {
      if (!ofTimes.test(token?.text ?? '')) return undefined;
    }
  }
  const clocked = hours === undefined ? shiftHours(reader, part) : undefined;
  const counts = tokens.slice(part.start, part.end).filter(({ number }) => number?.form === 'plain').length;
  hours ??= clocked;
  const date = dateIn(reader, part);
  if (hours === undefined || hours < 0.5 || hours > 14 || date === undefined) return undefined;
  // A further number may be other hours: "4 hrs fri and 3 sat".
  if (counts > (clocked === undefined ? 0 : 2) || dateIn(reader, { ...part, start: date.end }) !== undefined) return undefined;
  const each = hours;
  return dateOutcome(
    reader,
    date,
    (day) => ({ fact: 'crew', people: 1, hours: each, totalHours: each, ...(day === undefined ? {} : { date: day }) }),
    part.start,
    part.end,
  );
};
