// "55 instead of 50, rate same", "price stays the same", "no change to the price": what is put right is the number alone.

import { pattern } from '../pattern.ts';
import type { Finding } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const price = '(price|prices|rate|rates|cost|costs|pricing|quote|charge)';
const same =
  '(same|unchanged|as is|as it was|as they were|as before|as quoted|as agreed|the same|stands|still stands|still the same|still same|still good|fixed|holds)';
const form = pattern(
  `((the|our|each|unit)? ${price} (each|per piece|per head)? (to|is|are|was|be|stay|stays|staying|remain|remains|keep|keeps|kept|will|still|all|both|as|at|it){0,4} ${same} (as (before|quoted|it was|agreed|last time)|each)?|(at|for|on|with|keep|keeping)? (the)? same (unit|each)? ${price} (each|per piece|as before|as quoted)?|(keep|keeping|leave|leaving|hold) (the|our|each){0,2} ${price} (the)? (same|as is|as it is|as it was|alone|where it is)|(no|without|not) (a)? (change|changes|changing|difference) (to|in|on|of)? (the)? ${price}|(no|without) ${price} (change|changes|increase|difference)|(the)? ${price} (doesn't|doesnt|does not|don't|dont|won't|wont|isn't|isnt|hasn't|hasnt|not) (change|changing|changed|move|moving))`,
);

const ofEach = pattern('(<each>|per piece|each price|unit price|unit cost|unit rate)');

/** Whether it is the price of each that stays, and not what all of them come to. */
export const sameEach = (tokens: readonly Token[], start: number, end: number): boolean => ofEach.in(tokens, start, end) !== undefined;

/** The stretch that says the price stays as it is. */
export const samePrice = (tokens: readonly Token[], start: number, end: number): readonly [number, number] | undefined => {
  const match = form.in(tokens, start, end);
  return match === undefined ? undefined : [match.start, match.end];
};

/** "same price each": whatever the number is, each costs what it cost. */
export const keepsPriceEach = (tokens: readonly Token[], start: number, end: number): boolean => {
  const same = samePrice(tokens, start, end);
  return same !== undefined && sameEach(tokens, same[0], end);
};

/** "make it 30 bouts at the same price each" */
export const atSameEach = (tokens: readonly Token[], { start, end }: { start: number; end: number }, finding: Finding): Finding => {
  const [fact, another] = finding.facts ?? [];
  if (fact?.fact !== 'change' || fact.what !== 'count' || another !== undefined || !keepsPriceEach(tokens, start, end)) return finding;
  return { ...finding, facts: [{ ...fact, sameEach: true }] };
};
