// What several goods of one message share: a price for two of them, a currency, a tax said last.

import type { FactOf } from '../fact.ts';
import type { Token } from '../text/token.ts';
import { itemName, knowsItem } from './item-name.ts';
import { isSecondName } from './second-name.ts';

type Placed = Token & { readonly at: number };
const joins = /^(,|and|&|\+|n|all|both|each)$/;

/** The names a price is said of: "limonium and statice both 5 a bunch" names two. `named` leaves gaps where other words stand in `tokens`. */
export const namesSaid = (named: readonly Placed[], tokens: readonly Token[], items: readonly string[]): string[] => {
  const runs: Placed[][] = [];
  for (const token of named) {
    const run = runs.at(-1);
    if (run?.at(-1)?.at === token.at - 1) run.push(token);
    else runs.push([token]);
  }
  const first = runs.findIndex((run) => knowsItem(run, items));
  const meant = first < 0 ? [[...named]] : [runs[first] as Placed[]];
  for (let at = first + 1; first >= 0 && at < runs.length; at++) {
    const [before, run] = [meant.at(-1), runs[at] as Placed[]];
    const between = tokens.slice((before?.at(-1)?.at ?? 0) + 1, run[0]?.at);
    if (isSecondName(tokens, run[0]?.at ?? 0)) break;
    if (!knowsItem(run, items) || !between.every((token) => joins.test(token.text))) break;
    meant.push(run);
  }
  return meant.flatMap((run) => itemName(run, true) ?? []);
};

/** The currency of one and the tax said last hold for all. */
export const shareTax = (given: readonly FactOf<'pack'>[]): FactOf<'pack'>[] => {
  const last = given.at(-1);
  const currency = given.find((fact) => fact.currency !== undefined)?.currency;
  const facts = given.map((fact) =>
    fact.currency === undefined && fact.symbol === undefined && currency !== undefined ? { ...fact, currency } : fact,
  );
  return facts.map((fact) =>
    fact.basis === undefined && last?.basis !== undefined
      ? { ...fact, basis: last.basis, ...(last.taxName === undefined ? {} : { taxName: last.taxName }) }
      : fact,
  );
};
