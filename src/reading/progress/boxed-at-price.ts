// How pieces are sold, and no work done.

import { pattern } from '../pattern.ts';

// "12 bouts boxed £14 each": how they are sold, and no work done.
export const boxedAtPrice = pattern(
  '<piece> (boxed|boxed up|in boxes|in a box|in their own box|carded|gift boxed|wrapped) (,|-|:|and)? (at|@|for|is|are|=){0,2} (<money>|<plain> <each>)',
);
