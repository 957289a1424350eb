// "from 12 to 15" tells what it was and what it is now; of "12 or 15", "back to 12-15" and "now 12-15" neither end is surely meant.

import type { Token } from '../text/token.ts';

/** What it was and what it is, where the token at `at` tells both. */
export const wasAndIs = (tokens: readonly Token[], at: number): readonly [string, string] | undefined => {
  const [before, token] = [tokens[at - 1], tokens[at]];
  const number = token?.number;
  if (number?.max === undefined || number.or !== undefined || before?.means['upTo'] !== undefined) return undefined;
  const told = before?.text === 'from' || (/ to /.test(token?.text ?? '') && !/^(to|now|at|is|are|be)$/.test(before?.text ?? ''));
  return told ? [number.amount, number.max] : undefined;
};
