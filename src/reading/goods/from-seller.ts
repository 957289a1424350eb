// Whom goods are bought from, said behind their price: "gyp a fiver a bunch off yer man", "£6 a wrap from the lads at the market". "50p a bunch off roses" takes from a price.

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const seller =
  '(man|lad|lads|lady|ladies|guy|guys|fella|fellas|fellow|bloke|boys|girls|wan|one|crowd|grower|growers|farmer|wholesaler|wholesalers|supplier|suppliers|market|auction|markets|importer|rep|stall|farm|dutchman|dutch|nursery)';
const form = pattern(
  `(off|from|off of|at) ((yer|your|ur|yon|that|the|our|a|my|this|his|her|their) (dutch|market|flower|flowers|foliage|wholesale|usual|new|other|same|local|wee|old|<weekday>){0,2} ${seller} ((at|in|down|up|from|on|with) (the|our)? (dutch|flower|market|auction|corner|van|lorry|truck|stall|markets|road){1,2})?|him|her|them|yer man|themselves)`,
);

/** The words that name the seller, where they stand behind a price and its pack. */
export const fromSeller = (tokens: readonly Token[], start: number, end: number): Match | undefined => form.in(tokens, start, end);
