// How many of each kind, in one row behind their prices: "bouts 13, pin corsages 27, need 11 and 4".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount } from '../text/token.ts';

const opening = pattern(
  "(,|.|;|-|and|so|they|she|he|we|client|bride){0,3} (need|needs|needing|want|wants|wanting|qty|quantity|quantities|numbers|nos|order|ordering|get|do|make|making|having|take|taking|we'll have) (about|:)?",
);

/** As many counts as there are kinds, if a word for wanting heads them. */
export const countsBehind = (
  reader: Reader,
  start: number,
  kinds: number,
): { counts: number[]; places: number[]; end: number } | undefined => {
  const { tokens } = reader;
  const match = opening.at(tokens, start, tokens.length);
  if (match === undefined) return undefined;
  const places: number[] = [];
  let end = match.end;
  for (let index = match.end; index < tokens.length; index++) {
    const token = tokens[index];
    if (isCount(token) && token?.number?.max === undefined && reader.free(index)) {
      places.push(index);
      end = index + 1;
    } else if (!/^(and|n|&|,|\+|\/|then)$/.test(token?.text ?? '')) break;
  }
  const next = tokens[end];
  if (next?.means['piece'] !== undefined || next?.means['each'] !== undefined) return undefined;
  const counts = places.map((place) => Number(tokens[place]?.number?.amount));
  return counts.length === kinds ? { counts, places, end } : undefined;
};
