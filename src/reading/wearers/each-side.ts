// "6 attendants a side": as many on one side as on the other, so twelve.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const aSide = pattern('(on|at)? (a|each|per|either|every) (side|sides)');

/** Where such words end behind a name read up to `index`: its "each" or "a" may be read with it. */
export const onEachSide = ({ tokens }: Reader, index: number, end: number): number | undefined => {
  const from = /^(a|each)$/.test(tokens[index - 1]?.text ?? '') ? index - 1 : index;
  return aSide.at(tokens, from, end)?.end;
};
