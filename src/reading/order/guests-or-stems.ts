// Numbers beside an order that price nothing: how many guests come ("wedding for 50"), and what may go on stems ("no more than 4 on stems per bout").

import { pattern } from '../pattern.ts';
import { isEnd } from '../text/sentence-end.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';

const ofMoney = ['each', 'all', 'included', 'onTop', 'taxName', 'taxWord', 'piece', 'budget'];

/** "wedding for 50, 12 bouts": guests, where no piece is named in the clause before and nothing of money behind. */
export const isGuestCount = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token?.number?.form !== 'plain' || !/^\d+$/.test(token.number.amount)) return false;
  if (!/^(for|of)$/.test(tokens[index - 1]?.text ?? '') || !isOccasion(tokens[index - 2]?.text ?? '')) return false;
  const next = tokens[index + 1];
  if (next !== undefined && ofMoney.some((tag) => next.means[tag] !== undefined)) return false;
  let start = index - 2;
  while (start > 0 && !isEnd(tokens, start - 1) && tokens[start - 1]?.text !== ',') start -= 1;
  return !tokens.slice(start, index).some(({ means, number }) => means['piece'] !== undefined || number !== undefined);
};

const onStems = pattern(
  '(<each>)? (on|for|of|in|worth of|worth) (the|our)? (stems|stem|foliage|stem cost|stem costs|stem money|materials|ingredients)',
);
/** "spend no more than 4 on stems per bout": what goes in, not what it is sold for. */
export const isForStems = (tokens: readonly Token[], index: number): boolean => onStems.at(tokens, index + 1, tokens.length) !== undefined;
