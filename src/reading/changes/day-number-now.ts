// "it was 14 march now its 21": a day of the month with nothing but its number, beside the one taken back.

import type { DateRead } from '../dates/date-read.ts';
import { dayAlone } from '../dates/part-dates.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const form = pattern(
  "now (it is|it's|its|is|on|the|to|set for|for){0,3} <d:plain> (pls|please|instead|sorry|same time|same month|of the same month)?",
);

export const dayNumberNow = ({ tokens, context }: Reader, { start, end }: Part, taken: DateRead | undefined): readonly DateRead[] => {
  const match = taken === undefined || taken.relative === true ? undefined : form.in(tokens, start, end);
  const day = Number(match?.kept['d']?.number?.amount);
  const next = tokens[match?.end ?? end];
  if (match === undefined || match.kept['d'] === undefined || !Number.isInteger(day) || day < 1 || day > 31) return [];
  if (match.end < end && next?.text !== ',') return [];
  return [dayAlone(tokens.indexOf(match.kept['d'], match.start), match.end, day, context)];
};
