// A day that is called off where another is named: "20 march is off, new date 27 march", "scrap the 20th, it's the 27th of march".

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { dateAt } from './date-forms.ts';
import { dayAlone } from './part-dates.ts';

const off = pattern(
  "(date|one|wedding|event)? (is|'s|was|has been|been|got|isn't|isnt|doesn't|doesnt|won't|wont)? (now|been|all)? (off|out|cancelled|canceled|scrapped|dead|gone|fallen through|fell through|no good|not happening|working|work|happening|suit|on anymore|wrong|incorrect|a typo|my typo|a mistake|my mistake|not right|out of date|the old (date|one|day))",
);
const scrapped = pattern('(scrap|forget|ditch|drop|cancel|bin|lose|scratch|skip|ignore) (the|that)?');

/** Where the day taken back stands, in one sentence with the day that is meant. */
export const dayCalledOff = (reader: Reader, { start, end }: Part): readonly [number, number] | undefined => {
  const { tokens, context } = reader;
  if (!anyIn([off, scrapped], tokens, start, end)) return undefined;
  for (let index = start; index < end; index++) {
    const alone =
      tokens[index]?.number?.form === 'ordinal' ? dayAlone(index, index + 1, Number(tokens[index]?.number?.amount), context) : undefined;
    const read = dateAt(tokens, index, context) ?? alone;
    if (read === undefined || read.end > end) continue;
    // "friday off, back saturday" is somebody's day off.
    const dated = read.relative !== true || read.dayOnly !== undefined;
    const behind = !dated ? undefined : off.at(tokens, read.end, end);
    if (behind !== undefined) return [index, behind.end];
    const before = dated && [1, 2].some((by) => scrapped.at(tokens, index - by, index)?.end === index);
    if (before) return [index, read.end];
    index = read.end - 1;
  }
  return undefined;
};
