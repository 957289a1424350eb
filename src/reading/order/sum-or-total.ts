// Lines with a price each, and a total they do not come to: "10 bouts at 14 and 4 corsages at 30, total 300". Nobody but the person knows which of them holds.

import { decimal } from '../../values/decimal.ts';
import type { Fact, FactOf } from '../fact.ts';
import type { Ask } from '../reading.ts';

type Line = FactOf<'pieces'>;

const isLine = (fact: Fact): fact is Line => fact.fact === 'pieces';
const isTotal = (fact: Fact): fact is FactOf<'price'> =>
  fact.fact === 'price' &&
  fact.per === 'all' &&
  fact.kind === undefined &&
  fact.piece === undefined &&
  fact.amountMax === undefined &&
  fact.coversOther !== true;
const isPriced = ({ count, countMax, price }: Line): boolean =>
  count !== null && countMax === undefined && price?.per === 'each' && price.amountMax === undefined && price.kind === undefined;

/** What is told, without the prices that contradict each other, and the question which of them holds; undefined where none do. */
export const sumOrTotal = (facts: readonly Fact[]): { facts: readonly Fact[]; ask: Ask } | undefined => {
  const lines = facts.filter(isLine);
  const total = facts.find(isTotal);
  if (total === undefined || lines.length < 2 || !lines.every(isPriced)) return undefined;
  if (new Set(lines.map((line) => line.piece)).size < lines.length) return undefined;
  const sum = lines.reduce((all, { count, price }) => all.plus(decimal(price?.amount ?? '0').times(count ?? 0)), decimal(0));
  if (sum.equals(total.amount)) return undefined;
  const prices = lines.map(({ piece, price, words }): Fact => {
    const { per: _, ...amount } = price as NonNullable<Line['price']>;
    return { fact: 'price', ...amount, per: 'each', piece, words };
  });
  const choices = [
    { words: `the lines, ${sum.decimalPlaces() > 0 ? sum.toFixed(2) : sum.toFixed()}`, facts: prices },
    { words: total.words, facts: [total] },
  ];
  return {
    facts: facts.flatMap((fact): Fact[] => {
      if (fact === total) return [];
      if (!isLine(fact)) return [fact];
      const { price: _, ...counted } = fact;
      return [counted];
    }),
    ask: { about: 'price', why: 'sum or total', words: total.words, choices },
  };
};
