// How many wear them in all, said beside the list: "so 9", "= 8", "12 all told".

import { firstAt, type Match } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';
import { partyOf, totalForms } from './wearer-words.ts';

// "that's seven men" and "flower girl is 3" are no totals.
export const totalAt = (reader: Reader, index: number, end: number): Match | undefined => {
  const match = firstAt(totalForms, reader.tokens, index, end);
  if (match === undefined) return undefined;
  // "fathers 2 total 6"
  if (isCount(reader.tokens[index]) && isCount(reader.tokens[match.end])) return undefined;
  const next = /^(x|of|the|of the|little|other)$/.test(reader.tokens[match.end]?.text ?? '') ? match.end + 1 : match.end;
  if (next < end && reader.tokens[next]?.means['role'] !== undefined) return undefined;
  return reader.tokens[index]?.text === 'is' && reader.tokens[index - 1]?.means['role'] !== undefined ? undefined : match;
};
// `least`: as many as are counted under one name; "one of them" is no total of six.
const totalIn = (reader: Reader, part: Part, least: number): Match | undefined => {
  for (let index = part.start; index < part.end; index++) {
    const match = totalAt(reader, index, part.end);
    if (match !== undefined && Number(match.kept['n']?.number?.amount) >= least) return match;
  }
  return undefined;
};

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
