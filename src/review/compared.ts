// One figure as planned and as it came out. Either may be unknown, and then there is no difference to show.

import type { Decimal } from '../values/decimal.ts';

export interface Compared {
  readonly planned: Decimal | undefined;
  readonly actual: Decimal | undefined;
  readonly over: Decimal | undefined; // actual less planned
}

export const compared = (planned: Decimal | undefined, actual: Decimal | undefined): Compared => ({
  planned,
  actual,
  over: planned === undefined ? undefined : actual?.minus(planned),
});

/** Both sides through one sum; a side stays unknown where anything it needs is. */
export const comparedBy = (sides: readonly Compared[], figure: (...values: readonly Decimal[]) => Decimal | undefined): Compared => {
  const side = (of: 'planned' | 'actual'): Decimal | undefined => {
    const values = sides.flatMap((one) => one[of] ?? []);
    return values.length === sides.length ? figure(...values) : undefined;
  };
  return compared(side('planned'), side('actual'));
};
