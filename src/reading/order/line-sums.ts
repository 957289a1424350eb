// What a line comes to, written behind its price: "20 bouts @ 16 = 320, 6 corsages at 30 (180)". It is taken so only when it is the count times the price.

import { decimal } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { endsThere } from './price-ends.ts';

const comesTo = pattern(
  "(=|\\(|-|is|so|that's|thats|which is|makes|comes to|come to|totals) (=|so|that's|thats|it's|total|just)? <s:amount> (\\))?",
);

const ends = (tokens: readonly Token[], end: number): boolean =>
  endsThere(tokens, end) || tokens[end]?.means['all'] !== undefined || /^(and|plus|n)$/.test(tokens[end]?.text ?? '');

/** The last of the numbers taken as counts that stands before `index`: what a price there is the price of. */
export const lastBefore = (counts: ReadonlySet<number>, index: number): number | undefined =>
  [...counts].filter((count) => count < index).sort((a, b) => b - a)[0];

/** The sum behind a price that ends at `end`, and where it ends; `counts` are the numbers taken as counts. */
export const lineSum = (
  tokens: readonly Token[],
  counts: ReadonlySet<number>,
  index: number,
  end: number,
): { readonly at: number; readonly end: number } | undefined => {
  const match = comesTo.at(tokens, end, tokens.length);
  const [sum, unit] = [match?.kept['s'], tokens[index]?.number];
  if (match === undefined || sum?.number === undefined || unit === undefined || unit.max !== undefined || sum.number.max !== undefined)
    return undefined;
  const place = lastBefore(counts, index);
  const count = place === undefined ? undefined : tokens[place]?.number;
  if (count === undefined || count.max !== undefined || Number(count.amount) < 2 || !ends(tokens, match.end)) return undefined;
  return decimal(unit.amount).times(count.amount).equals(sum.number.amount) ? { at: tokens.indexOf(sum, end), end: match.end } : undefined;
};
