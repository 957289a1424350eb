// A sum that covers several things: "$275 covers the bouquet and 5 bouts", "900 covers bridal bouquet n 8 bhs".

import { pattern } from '../pattern.ts';
import type { NumberRead, Token } from '../text/token.ts';

const covers = pattern('(to cover|covers|cover|covering|gets|buys) <any>');

// So much is no number of anything that covers; "120 covers for dinner" are seats.
const coversMuch = (number: NumberRead, verb: Token | undefined, next: Token | undefined): boolean =>
  number.max === undefined &&
  Number(number.amount) >= 100 &&
  /^(to|cover(s|ing)?|gets|buys)$/.test(verb?.text ?? '') &&
  !/^(for|at|,|\.|are|on|per)$/.test(next?.text ?? ',');

/** Whether the number before this place is what all of that comes to. */
export const coversAll = (tokens: readonly Token[], end: number, number: NumberRead): boolean =>
  covers.at(tokens, end, tokens.length) !== undefined && (number.form === 'money' || coversMuch(number, tokens[end], tokens[end + 1]));

// "full decor job Rs 1,20,000 incl GST, in that 50 lapel flowers": the pieces are a part of what it pays for.
const some = '(there are|there is|is|are|also|only|about){0,2} <count> (<material>)? <piece>';
const partOfJob = pattern(
  `(decor|decoration|decorations|florals|flowers|job|package|wedding|event|setup|stage|mandap) (job|package|decor|price|quote|total|bill|work|comes to|is|at|for|:|-|all|,){0,3} <amount> <any>{0,8} ((in|within|inside|out of|of) (that|it|this|which|them) ${some}|(,|-|with|incl|including) <count> (<material>)? <piece> (are|is)? (included|in that|in it|in this|within that|inside that))`,
);

/** Whether what is paid pays for other work as well. `counted`: pieces were read before. */
export const coversOthers = (tokens: readonly Token[], counted: boolean): boolean =>
  // "2 tables of 8, a buttonhole each": those sit there.
  tokens.some(({ means, text }) => means['other'] !== undefined && !(counted && /^tables?$/.test(text))) ||
  partOfJob.in(tokens, 0, tokens.length) !== undefined;
