// How pieces are sold or where they are to go, and no work done.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// "12 bouts boxed £14 each": how they are sold.
const boxedAtPrice = pattern(
  '<piece> (boxed|boxed up|in boxes|in a box|in their own box|carded|gift boxed|wrapped) (,|-|:|and)? (at|@|for|is|are|=){0,2} (<money>|<plain> <each>)',
);
// "put the bouts in the box" asks for it.
const toBePut = pattern(
  '((can|could|will) (you|someone|u)|pls|please|just|and|then|ok|,){0,4} (put|pop|stick|place|move|leave|keep|load|carry|shift) (the|all the|those|these|them|my|her|all) (<material>)? <piece>',
);

export const tellsNoWork = ({ tokens }: Reader, { start, end }: Part): boolean =>
  boxedAtPrice.in(tokens, start, end) !== undefined || toBePut.at(tokens, start, end) !== undefined;
