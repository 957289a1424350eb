// What one piece costs, and who wears them: "$15 a bout, thats 7 guys plus the groom", "groom plus 7 lads, €15 a buttonhole".

import type { PieceKind } from '../../handbook/pieces.ts';
import { priceEach } from '../order/price-each.ts';
import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { readWearers } from './read-wearers.ts';

const onePiece =
  '((<n:amount> (each|ea)? (a|an|per|/|for a|for an|for each) (<material>)? <p:piece>)|(<p:piece> (at|@|are|-|:)? (<n:money> (each|ea|apiece)?|<n:plain> (each|ea|apiece))))';
const ahead = pattern(
  `(so|ok|its|it's|it is|at|@|charging|doing|quoted|quote|price|price is|,|:){0,3} ${onePiece} (,|-|:|;|=|so|for|on|x|that's|thats|that is|that|there's|theres|there are|we need|need|they need|it's|its){1,3}`,
);
const behind = pattern(`(,|-|:|;|at|@|all|for|it's|its|that's|thats|so){1,3} ${onePiece}`);
const rest = pattern(
  '(,|-|\\(|\\)|<tax>|<included>|<onTop>|<percent>|<material>|in|not|on|is|it|please|pls|thanks|ta|all|added|yet|extra|top|.){1,10}',
);
// "$15 a bout for the groom, 14 for the ushers": no number of ushers.
const pricesAnother = pattern('(<amount> (each|ea)? (for|on)|<money>)');
const named = pattern('(<role>|<owner>)');

// Little is paid for making one, too.
const leastPrice = 5;
const lastNamed = ({ tokens }: Reader, start: number, end: number): number => {
  let last = start;
  for (let index = named.next(tokens, start, end); index < end; index = named.next(tokens, index + 1, end)) last = index + 1;
  return last;
};

interface Sides {
  readonly price: Match;
  readonly start: number; // the list
  readonly end: number;
  readonly last: number; // where both end
}
const sidesOf = (reader: Reader, part: Part): Sides | undefined => {
  const { tokens } = reader;
  const price = ahead.at(tokens, part.start, part.end);
  if (price !== undefined) {
    const end = lastNamed(reader, price.end, part.end);
    return { price, start: price.end, end, last: end };
  }
  const tail = behind.in(tokens, part.start, part.end);
  return tail === undefined ? undefined : { price: tail, start: part.start, end: tail.start, last: tail.end };
};

/** Both together; nothing where anything else is said in the sentence, tax aside. */
export const pricedPerPiece = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (part.asked) return undefined;
  const sides = sidesOf(reader, part);
  const { n: amount, p: kind } = sides?.price.kept ?? {};
  const number = amount?.number;
  if (sides === undefined || number === undefined || sides.end <= sides.start || !allFree(reader, part.start, sides.last)) return undefined;
  if (number.max !== undefined || number.or !== undefined || Number(number.amount) < leastPrice) return undefined;
  if (sides.last < part.end && rest.at(tokens, sides.last, part.end)?.end !== part.end) return undefined;
  const piece = kind?.means['piece'] as PieceKind | undefined;
  const list = { ...part, start: sides.start, end: sides.end };
  const stretch = tokens.slice(list.start, list.end);
  if (piece === undefined || piece === 'unspecified' || stretch.some(({ means }) => means['piece'] !== undefined)) return undefined;
  if (pricesAnother.in(tokens, list.start, list.end) !== undefined) return undefined;
  const read = readWearers(reader, list);
  const sure = read.clean && !read.unknown && !read.unsaid && !read.loose && read.total === undefined;
  if (!sure || read.entries.some(({ most, note }) => most !== undefined || note !== undefined)) return undefined;
  // "4 girls, $6 a crown" may tell who makes them.
  const [only, second] = read.entries;
  if (only === undefined || (second === undefined && stretch.some(({ means }) => means['bench'] !== undefined))) return undefined;
  const count = read.entries.reduce((all, entry) => all + entry.count, 0);
  const rough = read.entries.some(({ approx }) => approx === true);
  return found(reader, part.start, sides.last, [
    { fact: 'wearers', wearers: read.entries.map(({ at: _, most: __, ...entry }) => ({ ...entry, piece })) },
    { fact: 'pieces', piece, count, ...(rough ? { approx: true as const } : {}) },
    { fact: 'price', ...priceEach(number) },
  ]);
};
