// "11" where "10-12 bouts done" was asked about: a number between the two ends is neither of the choices, and is what it was.

import { decimal } from '../values/decimal.ts';
import type { Fact } from './fact.ts';
import type { Ask } from './reading.ts';
import { isCount, isSingle, type Token } from './text/token.ts';

const firstNumber = (words: string): number => Number(/\d+(\.\d+)?/.exec(words)?.[0]);

/** The value as far between the two as the number is between the ends: what is counted from it goes with it. */
const between = (low: unknown, high: unknown, share: readonly [number, number]): unknown => {
  if (typeof low === 'number' && typeof high === 'number')
    return low === high ? low : decimal(high).minus(low).times(share[0]).dividedBy(share[1]).plus(low).toNumber();
  if (typeof low !== 'object' || typeof high !== 'object' || low === null || high === null) return low;
  if (Array.isArray(low)) return low.map((each, at) => between(each, (high as unknown[])[at], share));
  return Object.fromEntries(
    Object.entries(low).map(([key, value]) => [key, between(value, (high as Record<string, unknown>)[key], share)]),
  );
};

/** The facts with the number that was said, where it lies between the two ends that were asked about and nothing else is told. */
export const betweenEnds = (said: readonly Token[], { why, choices }: Ask): readonly Fact[] | undefined => {
  const [low, high] = choices;
  const number = said.find((token) => token.number !== undefined);
  if (why !== 'low or high' || low === undefined || high === undefined || !isCount(number) || !isSingle(number?.number)) return undefined;
  const own = new Set([...low.words.split(' '), ...high.words.split(' '), 'done', 'made']);
  if (!said.every((token) => token === number || token.text.split(' ').every((word) => own.has(word)))) return undefined;
  const [least, most, amount] = [firstNumber(low.words), firstNumber(high.words), Number(number.number.amount)];
  if (!(amount > least && amount < most)) return undefined;
  return low.facts.map((fact, at) => between(fact, high.facts[at], [amount - least, most - least]) as Fact);
};
