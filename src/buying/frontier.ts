// Choices worth keeping: of all ways to choose so far, only those where more value can't be had for the same spend or less. Dropping the others can
// never lose an optimum, because whatever is added later costs and adds the same for both.

export interface Point<Pick> {
  readonly spend: number; // whole numbers, so that sums are exact
  readonly value: number;
  readonly picks: Picks<Pick>;
}

/** Picks so far, newest first; shared between points. */
export type Picks<Pick> =
  | { readonly pick: Pick; readonly before: Picks<Pick> }
  | { readonly left: Picks<Pick>; readonly right: Picks<Pick> }
  | undefined;

/** Spend rising and value rising, strictly both. */
export type Frontier<Pick> = readonly Point<Pick>[];

export const nothingChosen: Frontier<never> = [{ spend: 0, value: 0, picks: undefined }];

/** The frontier of two frontiers' points together. On a tie the first list's point stays. */
export const either = <Pick>(a: Frontier<Pick>, b: Frontier<Pick>): Frontier<Pick> => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const kept: Point<Pick>[] = [];
  let best = -1;
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const left = a[i];
    const right = b[j];
    const takeLeft =
      right === undefined ||
      (left !== undefined && (left.spend < right.spend || (left.spend === right.spend && left.value >= right.value)));
    const next = takeLeft ? left : right;
    if (takeLeft) i += 1;
    else j += 1;
    if (next === undefined || next.value <= best) continue;
    best = next.value;
    kept.push(next);
  }
  return kept;
};

/** Every point with one pick more, within the limit. */
export const withPick = <Pick>(points: Frontier<Pick>, pick: Pick, spend: number, value: number, limit: number): Frontier<Pick> => {
  const more: Point<Pick>[] = [];
  for (const point of points) {
    if (point.spend + spend > limit) break;
    more.push({ spend: point.spend + spend, value: point.value + value, picks: { pick, before: point.picks } });
  }
  return more;
};

/** One point of each list together, in every way that stays within the limit. */
export const both = <Pick>(a: Frontier<Pick>, b: Frontier<Pick>, limit: number): Frontier<Pick> => {
  const [few, many] = a.length <= b.length ? [a, b] : [b, a];
  let lists = few.map((one): Frontier<Pick> => {
    const sums: Point<Pick>[] = [];
    for (const other of many) {
      if (one.spend + other.spend > limit) break;
      sums.push({ spend: one.spend + other.spend, value: one.value + other.value, picks: { left: one.picks, right: other.picks } });
    }
    return sums;
  });
  while (lists.length > 1) {
    lists = lists.flatMap((list, at) => (at % 2 === 0 ? [either(list, lists[at + 1] ?? [])] : []));
  }
  return lists[0] ?? [];
};

/** The most valuable pair within the limit, without building the frontier of all pairs; of equals the cheapest. */
export const bestPair = <Pick>(a: Frontier<Pick>, b: Frontier<Pick>, limit: number): Point<Pick> | undefined => {
  let best: Point<Pick> | undefined;
  let j = b.length - 1;
  for (const one of a) {
    while (j >= 0 && one.spend + (b[j]?.spend ?? 0) > limit) j -= 1;
    const other = b[j];
    if (other === undefined) break;
    best = better(best, { spend: one.spend + other.spend, value: one.value + other.value, picks: { left: one.picks, right: other.picks } });
  }
  return best;
};

/** The more valuable point; of equals the cheaper, then the first. */
export const better = <Pick>(a: Point<Pick> | undefined, b: Point<Pick> | undefined): Point<Pick> | undefined => {
  if (a === undefined || b === undefined) return a ?? b;
  return b.value > a.value || (b.value === a.value && b.spend < a.spend) ? b : a;
};

export const picked = <Pick>(picks: Picks<Pick>): readonly Pick[] => {
  if (picks === undefined) return [];
  return 'pick' in picks ? [...picked(picks.before), picks.pick] : [...picked(picks.left), ...picked(picks.right)];
};
