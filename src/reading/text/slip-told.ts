// A slip said to be one.

import type { Token } from './token.ts';

// "meant £9.50 each, fat fingers": so it was a slip.
const slips =
  /^((fat|big|clumsy|cold|frozen) (finger|fingers|fingered|thumb|thumbs)|brain (fade|fog|fart|freeze)|(typing|keyboard|keying|thumb|finger|autocorrect) (mistake|mistakes|error|errors|slip|slips|fail|slip up))$/;
const opens = new Set('fat big clumsy cold frozen brain typing keyboard keying thumb finger autocorrect'.split(' '));
export const isSlip = (tokens: readonly Token[], index: number): boolean =>
  opens.has(tokens[index]?.text ?? '') && slips.test(`${tokens[index]?.text} ${tokens[index + 1]?.text}`);
