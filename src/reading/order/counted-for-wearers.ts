// A price told behind a list of wearers: "groom, best man and 2 ushers buttonholes at 14 inc" prices what they wear.

import type { Reader } from '../phrase.ts';
import type { Price } from './price-at.ts';

const joins = /^(,|-|:|=|\.|;)$/;

/** How many pieces of one kind the list right before the price counts; none where it stands elsewhere or they are of several kinds. */
export const countedForWearers = ({ tokens, facts, free }: Reader, price: Price | undefined): number => {
  if (price === undefined || !facts.some(({ fact }) => fact === 'wearers')) return 0;
  const counted = facts.flatMap((fact) => (fact.fact === 'pieces' ? [fact] : []));
  const [only, second] = counted;
  if (only === undefined || second !== undefined || only.price !== undefined || facts.some(({ fact }) => fact === 'price')) return 0;
  let at = price.start - 1;
  while (at > price.start - 3 && (joins.test(tokens[at]?.text ?? '') || tokens[at]?.kind === 'line')) at -= 1;
  const before = tokens[at];
  const ofList =
    before !== undefined && (before.means['piece'] !== undefined || before.means['role'] !== undefined || before.number !== undefined);
  return ofList && !free(at) ? only.count : 0;
};
