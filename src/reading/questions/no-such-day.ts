// "shes saying the 31st of june??": the marks wonder at the day, which is told all the same and does not exist.

import { dateAt } from '../dates/date-forms.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

export const tellsNoDay = ({ tokens, context }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end);
  if (!words.some(({ means, number }) => means['month'] !== undefined || number?.form === 'slashed')) return false;
  for (let index = start; index < end; ) {
    const read = dateAt(tokens, index, context);
    if (read?.days.length === 0) return true;
    index = Math.max(read?.end ?? 0, index + 1); // in "14 march 40 bouts" the month is spoken for
  }
  return false;
};
