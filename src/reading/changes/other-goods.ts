// "12 more welcome bags", "add 12 more please cards": the number counts goods that are no pieces of the order, whatever they are called.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { isUnlisted } from '../words/other-things.ts';
import { usualWords } from '../words/usual-words.ts';

// A courtesy, and who it is said to: "12 more please lads", "5 more thanks heaps".
const said =
  '(please|pls|plz|plse|thanks|thank you|thankyou|thx|ta|cheers|too|also|as well|now|sorry|ok|actually|though|tho|lads|guys|girls|ladies|folks|team|gals|heaps|loads|mate|mates|hun|love|luv|boss)';
const courtesy = pattern(`(${said}|,){1,5}`);
const thing = '(<things>|<pack>|<other>|<ingredient>|<everyday>)';
// A name of up to four words that ends in a thing: "favour boxes", "order of service cards", "thank you cards".
const named = pattern(`(thank you|please|pls|of|<unlisted>|<role>){0,3} ${thing}`);

const isUnknown = (token: Token | undefined): boolean => token !== undefined && isUnlisted(token) && !usualWords.has(token.text);

const ending = pattern(`${thing} (,|-|:|\\()?`);

/** "favour boxes 2 more": other goods stand right before the count. */
export const goodsBefore = (tokens: readonly Token[], index: number): boolean =>
  [index - 1, index - 2].some((at) => ending.at(tokens, at, index)?.end === index);

/** Whether other goods are named behind a count of no kind. */
export const otherGoods = (tokens: readonly Token[], start: number, end: number): boolean => {
  const polite = courtesy.at(tokens, start, end);
  const match = named.at(tokens, start, end);
  // "12 more thanks heaps": all of it is courtesy.
  if (match !== undefined) return polite === undefined || polite.end < match.end;
  return start < end && polite === undefined && isUnknown(tokens[start]);
};
