// "2 corsages 28 sat 27th feb": the day behind the number has a number of its own and was read, so the one before it is none of the day's.

import type { Reader } from '../phrase.ts';

const reach = 4; // tokens: "on sat the 27th"

export const isBeforeWholeDay = (reader: Reader, index: number): boolean => {
  const { tokens, free } = reader;
  const next = tokens[index + 1];
  if (next === undefined || free(index + 1) || !(next.means['weekday'] !== undefined || /^(on|for)$/.test(next.text))) return false;
  for (let at = index + 2; at < index + 2 + reach && tokens[at] !== undefined && !free(at); at++)
    if (tokens[at]?.number !== undefined) return true;
  return false;
};
