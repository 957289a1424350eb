// "80 guests but only the groom n his 5 groomsmen wearing": how many come ahead of those who wear them.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const guests = pattern(
  "(about|around|so|we have|there are|theres|there's|it's|its){0,2} <n:count> (guests|people|seats|seated|invited|coming|pax|heads|covers|at the (wedding|do|party)) (guests|coming|invited|in all|total)? (,|-|;|but|and|with|of which|:){1,2} (<only:word>)?",
);
const narrows = /^(only|just)$/;
const fewest = 20; // so many are no list of wearers

/** The part without the guests, where others are named behind them. */
export const behindGuests = ({ tokens }: Reader, part: Part): Part => {
  const match = guests.at(tokens, part.start, part.end);
  const number = match?.kept['n']?.number;
  if (match === undefined || number === undefined) return part;
  const only = match.kept['only'];
  const narrowed = only !== undefined && narrows.test(only.text);
  if (!narrowed && Number(number.amount) < fewest) return part;
  const start = narrowed || only === undefined ? match.end : tokens.lastIndexOf(only, match.end);
  return tokens.slice(start, part.end).some(({ means }) => means['role'] !== undefined) ? { ...part, start } : part;
};
