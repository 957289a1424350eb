// A row of kinds with a number behind each, behind a counted kind with its price: "12 bouts 18, corsages 45, crowns 60" counts no 45.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const lineBefore = pattern('<count> (<material>)? <piece> (at|@|:|-|,)? <p:amount> (<each>)? (,|;|and|&|\\+){1,2}');
const taxed = pattern('(<each>)? (,)? (<included>|<onTop>|(plus|\\+)? (the)? <tax>)');

/** Whether numbers as high as that price are prices too, as a tax word behind the last says; open without one. Undefined where they may well count. */
export const likeLineBefore = ({ tokens }: Reader, pairs: ReadonlyMap<number, number>): 'prices' | 'open' | undefined => {
  if (pairs.size === 0) return undefined;
  const first = Math.min(...pairs.keys());
  const last = Math.max(...pairs.values());
  for (let start = Math.max(0, first - 8); start < first; start++) {
    const match = lineBefore.at(tokens, start, first);
    if (match?.end !== first) continue;
    const price = Number(match.kept['p']?.number?.amount);
    if ([...pairs.values()].some((at) => Number(tokens[at]?.number?.amount) < price)) return undefined;
    return taxed.at(tokens, last + 1, tokens.length) === undefined ? 'open' : 'prices';
  }
  return undefined;
};
