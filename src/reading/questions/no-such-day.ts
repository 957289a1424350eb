// "shes saying the 31st of june??": the marks wonder at the day, which is told all the same and does not exist.

import { dateAt } from '../dates/date-forms.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

export const tellsNoDay = ({ tokens, context }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end);
  if (!words.some(({ means, number }) => means['month'] !== undefined || number?.form === 'slashed')) return false;
  return words.some((_, at) => dateAt(tokens, start + at, context)?.days.length === 0);
};
