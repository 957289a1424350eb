// "crown bases 4 each", "ruscus 27 each": a name, a bare number and "each" with nothing besides. What no piece takes so many of is priced so;
// "fern 3 each" may be either, so nobody reads it.

import { type Pattern, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const most = 12; // stems of one kind in a piece, when nothing says more
const form: Pattern = pattern('(<any>){0,3} <i:ingredient> (:|-|are|is|@|at|now){0,1} <n:plain> <each>');
// One of these goes into a piece at the most.
const single = /\b(base|blank|ring|frame|bracelet|band|wristlet|hoop|cuff|comb|clip|brooch|box|bag|gun)$/;

export type EachSaid = 'price' | 'stems' | 'either';

// "roses cost 2 each" tells a price; "roses came to 26 each" tells of no recipe, and not what they are.
const verb = '(came|come|comes|coming|worked|works|work|ended|ends|turned|went|got|cost|costs|costing|was|were|charged|priced|paid)';
const told: Pattern = pattern(
  `<i:ingredient> (have|has|had|we|i|just|all|now)? ${verb} (out|up|in|to|at|about|around|me|us|for){0,3} <n:amount> <each>`,
);

/** What a number behind a name and before "each" says; undefined where the words say more than that. */
export const eachSaid = (tokens: readonly Token[], start: number, end: number): EachSaid | undefined => {
  const cost = told.in(tokens, start, end);
  if (cost?.kept['n']?.number?.form === 'plain')
    return tokens.slice(cost.start, cost.end).some(({ text }) => /^(cost|costs|costing|priced|charged)$/.test(text)) ? 'price' : 'either';
  const match = end - start > 8 ? undefined : form.at(tokens, start, end);
  const number = match?.kept['n']?.number;
  const item = match?.kept['i']?.means['ingredient'];
  if (match === undefined || number === undefined || number.max !== undefined || match.end !== end || item === undefined) return undefined;
  // "2 roses each" counts; so does "roses 1 each".
  const [before] = tokens.slice(start, match.end - 2).filter((token) => token.number !== undefined || token.means['piece'] !== undefined);
  if (before !== undefined || number.worded === true || /[.,]/.test(number.amount)) return undefined;
  const many = Number(number.amount);
  if (many <= 1) return 'stems';
  return single.test(item) || many > most ? 'price' : 'either';
};
