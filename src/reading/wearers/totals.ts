// How many wear them in all, said beside the list: "so 9", "= 8", "12 all told".

import { firstAt, type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isCount, isSingle } from '../text/token.ts';
import { countsThem } from './numbers-behind.ts';
import { countedWithin } from './one-of-those.ts';
import { partyOf, totalForms } from './wearer-words.ts';
import type { WearersRead } from './wearers-read.ts';

// "that's seven men" and "flower girl is 3" are no totals.
export const totalAt = (reader: Reader, index: number, end: number): Match | undefined => {
  const match = firstAt(totalForms, reader.tokens, index, end);
  if (match === undefined) return undefined;
  // "fathers 2 total 6"
  if (isCount(reader.tokens[index]) && isCount(reader.tokens[match.end])) return undefined;
  // "ushers = 4 + dads = 2"
  const [joint, other] = reader.tokens.slice(match.end, match.end + 2);
  if (reader.tokens[index]?.text === '=' && /^(\+|plus|and|&|n|,)$/.test(joint?.text ?? '') && other?.means['role'] !== undefined)
    return undefined;
  const next = /^(x|of|the|of the|little|other)$/.test(reader.tokens[match.end]?.text ?? '') ? match.end + 1 : match.end;
  if (next < end && reader.tokens[next]?.means['role'] !== undefined) return undefined;
  return reader.tokens[index]?.text === 'is' && reader.tokens[index - 1]?.means['role'] !== undefined ? undefined : match;
};
// `least`: as many as are counted under one name; "one of them" is no total of six.
const totalIn = (reader: Reader, part: Part, least: number): Match | undefined => {
  const them = countsThem(reader, part.start, part.end);
  for (let index = part.start; index < part.end; index++) {
    if (them !== undefined && index >= them.start && index < them.end) continue;
    const match = totalAt(reader, index, part.end);
    if (match !== undefined && Number(match.kept['n']?.number?.amount) >= least) return match;
  }
  return undefined;
};

// "all the boys plus the brides dad, makes 8": their sum at the end, where no kind of piece is named that could be what eight counts.
const sums = pattern(
  "(so|=|makes|making|that's|thats|that makes|which makes|which is|makes it|comes to|coming to|total|altogether|in all|in total|all up|is|it's|its|,|-|:){1,3} (it's|its|about|a total of|total|of)? <n:count> (people|persons|ppl|wearing|to wear|wearers|total|in all|all up|altogether|in total|overall|all told|<all>|heads)? (them|one|flowers)?",
);
const most = 24; // "both mums and the nans so 35" may tell a price
export const sumOfAll = ({ tokens }: Reader, { start, end }: Part, { entries, heads, total }: WearersRead): boolean => {
  if (tokens.slice(start, end).some(({ means }) => means['piece'] !== undefined)) return false;
  const counted = entries.reduce((all, { count }) => all + count, 0);
  // Each of those whose number is not said is one at least.
  if (total === undefined || total > most || total < counted + heads - entries.length) return false;
  for (let index = sums.next(tokens, start + 1, end); index < end; index = sums.next(tokens, index + 1, end)) {
    const match = sums.at(tokens, index, end);
    if (match?.end === end && isSingle(match.kept['n']?.number) && Number(match.kept['n']?.number?.amount) === total) return true;
  }
  return false;
};

/** Whether somebody is said to be one of those counted, and their sum is another. */
export const disagrees = ({ tokens }: Reader, { start, end }: Part, { entries, total }: WearersRead): boolean =>
  total !== entries.reduce((all, { count }) => all + count, 0) &&
  firstWhere(tokens, start, end, (_, index) => countedWithin(tokens, index)) >= 0;

/** What the part says they are in all, less those left out of a party; a total said by itself has left them out already: "party of 14, leave out the 2 babies". */
export const totalSaid = (
  reader: Reader,
  part: Part,
  least: number,
  leftOut: number,
): { readonly match: Match; readonly total: number } | undefined => {
  const party = partyOf.in(reader.tokens, part.start, part.end);
  const alone = totalIn(reader, part, least);
  const match = party ?? alone;
  if (match === undefined) return undefined;
  return { match, total: Number(match.kept['n']?.number?.amount) - (alone === undefined ? leftOut : 0) };
};
