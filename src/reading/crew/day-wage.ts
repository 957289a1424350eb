// A wage by the day, beside hands and hours.

import type { Finding, Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { dayWage } from './crew-forms.ts';

// "Rs 400 a day each" is no wage by the hour: it stays unread, and no one else takes it for a price.
export const withoutDayWage = (reader: Reader, finding: Finding): Finding[] => {
  const wage = dayWage.in(reader.tokens, finding.start, finding.end);
  if (wage === undefined) return [finding];
  const takes = placesIn(finding);
  return [
    { ...finding, takes: takes.filter((index) => index < wage.start || index >= wage.end) },
    { start: wage.start, end: wage.end, held: true },
  ];
};
