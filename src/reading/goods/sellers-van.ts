// A wholesaler who comes by van or lorry and sells by the pack: "off the dutch van ranunculus 85p a stem", "van had gyp £8 a bunch". Any other van fetches, and costs.

import { firstIn, type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const van = '(van|lorry|truck|wagon|trailer|stall)';
const whose = '(dutch|flower|flowers|sundries|sundry|foliage|market|wholesale|wholesaler|trade|holland|morning|<weekday>){0,2}';
const forms = [
  `(off|from|on|at) (the|our|that|this|his|her|their|a)? ${whose} ${van} (man|lady|guy|driver|lad)? (today|this|morning|tomorrow|<weekday>){0,2}`,
  `(the|our)? ${whose} ${van} (man|lady|guy|driver|lad|prices|price|list)? (today|this|morning|week|<weekday>){0,2} (had|has|have|did|was|is|doing|selling|sells|sold|asking|prices|list|:|-|,){1,2}`,
].map((source) => pattern(source));
const byThePack = pattern('<amount> (a|an|per|each|/|the) <pack>');
// "roses off the van at 9": when, and not for how much.
const hour = pattern(`${van} (<word>)? (at|by|@|about|around|till|until|before|after|from) (<plain>|<time>)`);
const packBehind = pattern('(a|an|per|each|/|the)? (<pack>|<each>)');

/** The words that name such a van, where goods are priced by the pack beside it. */
export const sellersVan = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  const named = firstIn(forms, tokens, start, end);
  if (named === undefined || byThePack.in(tokens, start, end) === undefined) return undefined;
  const until = hour.in(tokens, start, end);
  return until !== undefined && packBehind.at(tokens, until.end, end) === undefined ? undefined : named;
};
