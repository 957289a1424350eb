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
