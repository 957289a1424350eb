// The problem, exactly. Given choices c, each of one item i in one role r with whole-number spend s and value v, and a whole-number budget B:
//   maximise  the sum of v over the chosen choices
//   such that the sum of s is at most B;  at most one choice an item;  five or six choices in all;
//             every role that is listed at all has at least one choice and at most m, where m is the least number that lets the list make
//             six (of each role's n items, the sum of min(m, n) is at least 6), or all of it when fewer than six are listed.
// Solved by dynamic programming over frontiers (frontier.ts): first by item within a role, then by role. Only dominated choices are dropped and nothing
// is sampled or cut short, so the answer is the optimum, or there is no answer at all.

import { plantRoles } from '../handbook/roles.ts';
import type { Choice } from './fit-choices.ts';
import { bestPair, better, both, either, type Frontier, nothingChosen, type Point, picked, withPick } from './frontier.ts';

export const ingredientsLeast = 5;
export const ingredientsMost = 6;

export interface Mix {
  readonly choices: readonly Choice[];
  readonly spend: number;
  readonly value: number;
}

type ByCount = readonly Frontier<Choice>[]; // index: how many ingredients

/** `items`: the choices of each item. Undefined when nothing stays within the budget. */
export const bestMix = (items: readonly (readonly Choice[])[], budget: number): Mix | undefined => {
  const byRole = plantRoles.map((role) => items.filter(([first]) => first?.role === role)).filter((own) => own.length > 0);
  const most = mostOfRole(byRole.map((own) => own.length));
  const least = byRole.map((own) => Math.min(...own.flat().map((choice) => choice.spend)));
  const all = least.reduce((total, spend) => total + spend, 0);
  const roles = byRole.map((own, at) => withinRole(own, most, budget - all + (least[at] ?? 0))).sort((a, b) => pointsIn(a) - pointsIn(b)); // the longest last: the last is never multiplied out
  const last = roles.at(-1);
  if (last === undefined) return undefined;
  const others = roles.slice(0, -1).reduce<ByCount>((mixes, role) => acrossRoles(mixes, role, budget), [nothingChosen]);
  let best: Point<Choice> | undefined;
  for (let total = ingredientsLeast; total <= ingredientsMost; total += 1) {
    for (let own = 1; own <= most; own += 1) best = better(best, bestPair(others[total - own] ?? [], last[own] ?? [], budget));
  }
  return best === undefined ? undefined : { choices: picked(best.picks), spend: best.spend, value: best.value };
};

/** The least budget that any mix fits: the same problem with nothing to gain. */
export const leastSpend = (items: readonly (readonly Choice[])[]): number | undefined =>
  bestMix(
    items.map((choices) => choices.map((choice) => ({ ...choice, value: 0 }))),
    Number.MAX_SAFE_INTEGER,
  )?.spend;

/** The m of the problem, from how many items each role lists. */
export const mostOfRole = (listed: readonly number[]): number => {
  const together = (most: number) => listed.reduce((total, count) => total + Math.min(most, count), 0);
  const wanted = Math.min(ingredientsMost, together(ingredientsMost));
  let most = 1;
  while (together(most) < wanted) most += 1;
  return most;
};

const pointsIn = (role: ByCount): number => role.reduce((total, points) => total + points.length, 0);

const withinRole = (items: readonly (readonly Choice[])[], most: number, limit: number): ByCount => {
  const chosen: Frontier<Choice>[] = [nothingChosen, ...Array.from({ length: most }, () => [])];
  for (const choices of items) {
    for (let count = most; count >= 1; count -= 1) {
      const before = chosen[count - 1] ?? [];
      chosen[count] = choices.reduce(
        (points, choice) => either(points, withPick(before, choice, choice.spend, choice.value, limit)),
        chosen[count] ?? [],
      );
    }
  }
  return chosen;
};

const acrossRoles = (mixes: ByCount, role: ByCount, limit: number): ByCount =>
  Array.from({ length: ingredientsMost + 1 }, (_, total) =>
    role.slice(1).reduce((points, own, at) => either(points, both(mixes[total - at - 1] ?? [], own, limit)), [] as Frontier<Choice>),
  );
