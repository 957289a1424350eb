// The event's hour in a run sheet is that of the line that names the rite: "7:45 AM rentals / 4:00 PM ceremony". No other line's hour is the event's.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { clockLines, onClockLine } from '../text/clock-lines.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { type TimeRead, timeAt } from './clock-time.ts';
import { isLaterHour } from './main-hour.ts';

const rite = pattern(
  '(-|:|\\||,){0,2} (the|wedding|church|civil|marriage|main|event|outdoor|garden|lakeside|religious|catholic)? (ceremony|service|vows|mass|nikah|nikkah|church|chapel|registry)',
);
const named = pattern('(-|:|\\||,){0,2} (the)? <o:word>');
const prepares =
  /^(setup|set|prep|install|flowers|chairs|music|guests|arch|rehearsal|room|area|space|photos|doors|pews|pedestals|delivery|drop|access|open|opens|ends|over|done|finishes|decor|people)$/;

const feasts = /^(party|reception|farewell|wake)$/; // may come hours behind the rite

// "15:00 ceremony"; "14:00 ceremony flowers in" is work for it.
const isRite = ({ tokens }: Reader, start: number): boolean => {
  const match = rite.at(tokens, start + 1, tokens.length);
  return match !== undefined && !prepares.test(tokens[match.end]?.text ?? '');
};
const isEvent = ({ tokens }: Reader, start: number): boolean => {
  const match = named.at(tokens, start + 1, tokens.length);
  const word = match?.kept['o']?.text ?? '';
  return isOccasion(word) && !feasts.test(word) && !prepares.test(tokens[match?.end ?? 0]?.text ?? '');
};

/** The hours told near a day, those of a run sheet's lines left out but for the one of the rite. */
export const withSheetHour = (reader: Reader, told: readonly TimeRead[]): readonly TimeRead[] => {
  const near = told.filter(({ start }) => !isLaterHour(reader, start));
  const lines = clockLines(reader.tokens);
  if (lines.length === 0) return near;
  const rites = lines.filter((start) => isRite(reader, start));
  const [only, second] = rites.length > 0 ? rites : lines.filter((start) => isEvent(reader, start));
  const apart = near.filter(({ start }) => !onClockLine(reader.tokens, start));
  const hour = only === undefined || second !== undefined || !reader.free(only) ? undefined : timeAt(reader, only, true);
  return hour === undefined ? apart : [...apart, hour];
};
