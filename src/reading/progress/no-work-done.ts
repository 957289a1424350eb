// How pieces are sold or where they are to go, and no work done.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { doneAnywhere } from './counted-forms.ts';

// "12 bouts boxed £14 each": how they are sold.
const boxedAtPrice = pattern(
  '<piece> (boxed|boxed up|in boxes|in a box|in their own box|carded|gift boxed|wrapped) (,|-|:|and)? (at|@|for|is|are|=){0,2} (<money>|<plain> <each>)',
);
// "put the bouts in the box" asks for it.
const toBePut = pattern(
  '((can|could|will) (you|someone|u)|pls|please|just|and|then|ok|,){0,4} (put|pop|stick|place|move|leave|keep|load|carry|shift) (the|all the|those|these|them|my|her|all) (<material>)? <piece>',
);

// "best man is one of the 5": who they are.
const oneOfThem = pattern("(<role>|he|she|he's|she's|hes|shes) (is|'s)? (also|just|already)? (one|1) of the <count> (too|btw)?");
const tellsWho = ({ tokens }: Reader, { start, end }: Part): boolean =>
  oneOfThem.in(tokens, start, end)?.end === end && doneAnywhere.in(tokens, start, end) === undefined;

export const tellsNoWork = (reader: Reader, part: Part): boolean => tellsWho(reader, part) || onlySoldOrMoved(reader, part);

const onlySoldOrMoved = ({ tokens }: Reader, { start, end }: Part): boolean =>
  boxedAtPrice.in(tokens, start, end) !== undefined || toBePut.at(tokens, start, end) !== undefined;
