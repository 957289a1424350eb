// A share of the work and nothing else: "halfway", "25/60".

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { pieceIn } from './made-facts.ts';

// "half of them", "halfway": nothing else said, so it tells how far the work is.
const bareHalf = pattern(
  "(about|we're|were|around|ok|so|now|just|only|bout){0,2} (halfway|half way|half of them|half of the lot|half done|half of those|half of it) (now|done|there|pls)?",
);
export const halfAlone = (reader: Reader): Finding[] => {
  const match = bareHalf.at(reader.tokens, 0, reader.tokens.length);
  if (match === undefined || match.end !== reader.tokens.length) return [];
  if (reader.tokens.some((token) => token.text === 'of') && reader.context.pieces.length === 0) return [];
  return [found(reader, match.start, match.end, [{ fact: 'made', fraction: '0.5' }])];
};

// "25/60" alone: no day of the calendar, so it is how many of how many.
export const bareShare = (reader: Reader): Finding[] => {
  const [only, second] = reader.tokens;
  const [count = 0, of = 0, third] = only?.number?.parts ?? [];
  if (second !== undefined || only?.number?.form !== 'slashed' || third !== undefined || of <= 12 || count > of) return [];
  if (of <= 31 && count <= 12) return [];
  return [found(reader, 0, 1, [{ fact: 'made', count, of, total: true, ...(count === of ? { all: true } : {}) }])];
};

// "bouts: 20/45 corsages: 3/8": where one pair can be no day of the calendar, the others beside it are shares too.
const kindShare = pattern('<p:piece> (:|-|=|at|are|,)? <s:slashed>');
export const sharesByKind = (reader: Reader): Finding[] => {
  const matches: Match[] = [];
  const { length } = reader.tokens;
  for (let index = kindShare.next(reader.tokens, 0, length); index < length; index = kindShare.next(reader.tokens, index + 1, length)) {
    const match = kindShare.at(reader.tokens, index, length);
    // "9 bouts & 4 corsages, 13/24" may price them.
    const counted = reader.tokens[index - 1]?.number?.form === 'plain';
    if (match !== undefined && !counted && reader.free(index) && reader.free(match.end - 1)) matches.push(match);
  }
  if (matches.length === 0) return [];
  const parts = matches.map((match) => match.kept['s']?.number?.parts ?? []);
  const shares = parts.every(([count = 1, of = 0, third]) => third === undefined && count <= of);
  const noDay = parts.some(([count = 0, of = 0]) => of > 31 || (count > 12 && of > 12));
  // "corsages 6/6" and nothing else: all six.
  const complete = parts.every(([count, of]) => count === of) && reader.tokens.length <= 3 * parts.length;
  // "wrist corsages 5/8" and nothing else: a date would say what it is for.
  const others = reader.tokens.filter(({ text, kind }) => kind === 'line' || joins.test(text)).length;
  const alone = matches.reduce((sum, match) => sum + match.end - match.start, 0) === reader.tokens.length - others;
  if (!shares || !(noDay || complete || alone) || reader.tokens.some((token) => priced.some((tag) => token.means[tag] !== undefined)))
    return [];
  return matches.map((match, at) => {
    const [count = 0, of = 0] = parts[at] ?? [];
    return found(reader, match.start, match.end, [
      { fact: 'made', count, of, total: true, ...(count === of ? { all: true as const } : {}), ...pieceIn(match) },
    ]);
  });
};
const joins = /^(,|;|and|&|\+|n|\.)$/;
const priced = ['each', 'all', 'included', 'onTop', 'taxName', 'taxWord'];
