// A count and a word for finished, and the pieces that all ways to say so are made of.

import { type Pattern, pattern } from '../pattern.ts';
import { didWord, doneWord } from './done-words.ts';

export const did = `(${didWord})`;
export const done = `(${doneWord})`;
export const be = "(is|are|now|all|were|have been|has been|been|just|already|got|'s|get|fully|nearly|both|and|as)";
export const counted =
  '<n:count> (x|more|of the|of|of them|nos)? (more|other|last|first|little|of)? (<material>)? (more)? (<p:piece>)? (<piece>)?';

/** A count and a word for finished, in the usual orders. */
export const countedForms: readonly Pattern[] = [
  `(that's|thats|that makes|makes|now at|up to|<upTo>|now on|at|total|were at|we're at|on) (it|now|about)? ${counted} ${be}{0,2} (${done}|so far|now|in total|altogether) (so far|now|in total|altogether|overall|total)?`,
  `(got|have|had|we've|i've|ive|weve|with|another|and|so|ok|just) (another|about|the first|first)? ${counted} ${be}{0,2} ${done}`,
  `${counted} ${be}{0,2} ${done}`,
  `${did} (about|all|the|our|first|last|final|these|those|remaining|next|them|another|a further|further|just|a total of|up|out|my|off|with){0,3} ${counted}`,
  `${done} (:|-|another|is|=)? ${counted}`,
].map((source) => pattern(source));

export const doneAnywhere = pattern(done);
export const listEnd = pattern(`${be}{0,3} ${done}`);
