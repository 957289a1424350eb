// A stretch cut where some of its tokens say so.

import type { Stretch } from './message.ts';
import type { Token } from './token.ts';

/** What stands between the tokens that cut, without them; none of it is empty. */
export const stretchesBetween = (
  tokens: readonly Token[],
  { start, end }: Stretch,
  cuts: (token: Token | undefined, index: number) => boolean,
): Stretch[] => {
  const between: Stretch[] = [];
  let from = start;
  for (let index = start; index <= end; index++) {
    if (index < end && !cuts(tokens[index], index)) continue;
    if (index > from) between.push({ start: from, end: index });
    from = index + 1;
  }
  return between;
};
