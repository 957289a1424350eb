// How many of each kind, in one row behind their prices: "bouts 13, pin corsages 27, need 11 and 4".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount } from '../text/token.ts';

const opening = pattern(
  "(,|.|;|-|and|so|they|she|he|we|client|bride){0,3} (need|needs|needing|want|wants|wanting|qty|quantity|quantities|numbers|nos|order|ordering|get|do|make|making|having|take|taking|we'll have) (about|:)?",
);

// "8 and 5 of them", "6 and 2 respectively", "qty 8 + 5": a row that says by its end that it counts.
const closing = /^(respectively|resp|needed|wanted|required|reqd|please|pls)$/;
const ofThem = pattern('of (them|those|these|em|each|each respectively)');
/** Whether such a row can count nothing but pieces: "250 and 450 resp." may be prices. */
export const surelyCounts = (reader: Reader, row: { readonly end: number }): boolean =>
  /^(them|those|these|em|needed|wanted|required|reqd)$/.test(reader.tokens[row.end - 1]?.text ?? '');
const joins = /^(and|n|&|,|\+|\/|then)$/;

// Counts from here on with no more than a comma or "and" between them.
const rowFrom = (reader: Reader, from: number): { places: number[]; end: number } => {
  const { tokens } = reader;
  const places: number[] = [];
  let end = from;
  for (let index = from; index < tokens.length; index++) {
    const token = tokens[index];
    if (isCount(token) && token?.number?.max === undefined && reader.free(index)) {
      places.push(index);
      end = index + 1;
    } else if (!joins.test(token?.text ?? '')) break;
  }
  return { places, end };
};

/** As many counts as there are kinds behind `start`, if what follows them says that they count. */
export const countsInRow = (reader: Reader, start: number, kinds: number): { places: number[]; end: number } | undefined => {
  const { tokens } = reader;
  for (let from = start; from < tokens.length; from++) {
    if (!isCount(tokens[from]) || !reader.free(from) || !/^[,.;:-]$/.test(tokens[from - 1]?.text ?? ',')) continue;
    const { places, end } = rowFrom(reader, from);
    const told = closing.test(tokens[end]?.text ?? '') ? end + 1 : ofThem.at(tokens, end, tokens.length)?.end;
    if (told !== undefined && places.length === kinds) return { places, end: told };
  }
  return undefined;
};

/** As many counts as there are kinds, if a word for wanting heads them. */
export const countsBehind = (
  reader: Reader,
  start: number,
  kinds: number,
): { counts: number[]; places: number[]; end: number } | undefined => {
  const { tokens } = reader;
  const match = opening.at(tokens, start, tokens.length);
  if (match === undefined) return undefined;
  const { places, end } = rowFrom(reader, match.end);
  const next = tokens[end];
  if (next?.means['piece'] !== undefined || next?.means['each'] !== undefined) return undefined;
  const counts = places.map((place) => Number(tokens[place]?.number?.amount));
  return counts.length === kinds ? { counts, places, end } : undefined;
};
