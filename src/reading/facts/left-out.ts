// Numbers that none of the facts read beside them holds: "ribbon 5m £3, 25m £11" keeps one pack, "make it 20 at 14, 3 for kids" two changes.

import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { isSingle, type Token } from '../text/token.ts';

const valuesOf = (facts: readonly Unworded[]): ReadonlySet<number> =>
  new Set(
    facts
      .flatMap((fact) => Object.values(fact))
      .filter((value) => typeof value === 'number' || (typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value)))
      .map((value) => Math.abs(Number(value))),
  );

/** Where the plain numbers, the money and the ranges of percents stand that no fact has taken. */
export const leftOut = (tokens: readonly Token[], { start, end }: Part, facts: readonly Unworded[]): readonly number[] => {
  const values = valuesOf(facts);
  return placesIn({ start, end }).filter((index) => {
    const number = tokens[index]?.number;
    if (number === undefined || tokens[index]?.text === 'one' || !/^(plain|money|length|percent)$/.test(number.form)) return false;
    if (number.form === 'percent' && isSingle(number)) return false;
    if ([index - 1, index + 1].some((at) => tokens[at]?.means['month'] !== undefined)) return false; // "from 1 feb"
    return !values.has(Number(number.amount)) && !values.has(Number(number.max ?? Number.NaN));
  });
};
