// One old number takes back one thing only.

import type { Unworded } from '../phrase.ts';

/** "12 corsages at 30, i put 25": one old number cannot be both the count and the price. */
export const onceFrom = (facts: readonly Unworded[]): Unworded[] => {
  const priced = facts.find((fact) => fact.fact === 'change' && fact.what === 'price' && fact.from !== undefined);
  if (priced?.fact !== 'change') return [...facts];
  return facts.map((fact) => {
    if (fact.fact !== 'change' || fact.what !== 'count' || String(fact.from) !== String(priced.from)) return fact;
    const { from: _, ...rest } = fact;
    return rest;
  });
};

/** "12 bouts at £14, make it 15 bouts": two numbers of one kind. */
export const saysTwice = (facts: readonly Unworded[]): boolean => {
  const counts = facts.flatMap((fact) => (fact.fact === 'change' && fact.what === 'count' && fact.to !== undefined ? [fact] : []));
  return counts.some((fact, at) => counts.some((other, index) => index > at && other.piece === fact.piece && other.to !== fact.to));
};
