// Whether a price is a floor, a ceiling or a budget: "from 14", "16 max", "budget is 300".

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Price } from './price-at.ts';

export const kindAfter = pattern('(is|as)? (the|our|her|his|my|their|a)? (<k:upTo>|<k:budget>|<k:from>)');
export const kindBefore = pattern(
  '(<k:upTo>|<k:budget>|<k:from>) (is|of|about|around|:|at|for|are|like|roughly|approx|probably|maybe|something like|set at|capped at|stands at|sits at|around about|=|was|only|would be|will be|should be|somewhere|in the region of|in the range of){0,2} (is)? (about|around|only|between|near)?',
);

export const kindOf = (token: Token | undefined): Price['kind'] =>
  token === undefined ? undefined : token.means['budget'] !== undefined ? 'budget' : token.means['upTo'] !== undefined ? 'up to' : 'from';
// "budget is 300 max": the ceiling says more.
export const stronger = (one: Price['kind'], other: Price['kind']): Price['kind'] => (other === 'up to' ? other : (one ?? other));
