// One old number takes back one thing only.

import type { Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const without = (fact: Unworded): Unworded => {
  if (fact.fact !== 'change') return fact;
  const { from: _, ...rest } = fact;
  return rest;
};

// "16 corsages now not 12, 30 each": what stands between the count and the price was the count.
const standsBetween = (tokens: readonly Token[], count: unknown, old: unknown, price: unknown): boolean => {
  const at = (value: unknown, from = 0): number =>
    tokens.findIndex(({ number }, index) => index >= from && number?.amount !== undefined && number.amount === String(value));
  const [first, was] = [at(count), at(old)];
  return first >= 0 && first < was && at(price, was + 1) > was;
};

/** "12 corsages at 30, i put 25": one old number cannot be both the count and the price. */
export const onceFrom = (tokens: readonly Token[], facts: readonly Unworded[]): Unworded[] => {
  const priced = facts.find((fact) => fact.fact === 'change' && fact.what === 'price' && fact.from !== undefined);
  if (priced?.fact !== 'change') return [...facts];
  const counts = facts.filter((fact) => fact.fact === 'change' && fact.what === 'count' && String(fact.from) === String(priced.from));
  const ofCount = counts.some((fact) => fact.fact === 'change' && standsBetween(tokens, fact.to, fact.from, priced.to));
  return facts.map((fact) => ((ofCount ? fact === priced : counts.includes(fact)) ? without(fact) : fact));
};

/** "12 bouts at £14, make it 15 bouts": two numbers of one kind. */
export const saysTwice = (facts: readonly Unworded[]): boolean => {
  const counts = facts.flatMap((fact) => (fact.fact === 'change' && fact.what === 'count' && fact.to !== undefined ? [fact] : []));
  return counts.some((fact, at) => counts.some((other, index) => index > at && other.piece === fact.piece && other.to !== fact.to));
};
