// Packs and what is in them, as people say it: "50 stems", "3 bunches of 50", "1 spool of 8 yd", "2/3 of a stem".

import type { Item } from '../../buying/item.ts';
import type { Amount } from '../../buying/recipe-lines.ts';
import { type Decimal, decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';

const pluralOf = (word: string): string => {
  if (word === 'leaf') return 'leaves';
  return /(x|ch|s|sh)$/.test(word) ? `${word}es` : `${word}s`;
};

/** "50 stems", "1 pin", "8 yd": a unit of length or weight has no plural. */
export const inUnit = (count: string, { unit }: Item): string =>
  `${count} ${unit.measure !== 'count' || count === '1' ? unit.name : pluralOf(unit.name)}`;

/** One of what the price counts: "each", "a yd". */
export const perUnit = ({ unit }: Item): string => (unit.measure === 'count' ? 'each' : `a ${unit.name}`);

/** "3 bunches of 50", "1 spool of 8 yd", "66" for what is sold one by one. */
export const packsWords = (packs: number, item: Item): string => {
  if (item.size.eq(1) && item.pack === undefined) return inUnit(String(packs), item);
  const pack = item.pack ?? 'pack';
  const size = item.unit.measure === 'count' ? item.size.toFixed() : inUnit(item.size.toFixed(), item);
  return `${packs} ${packs === 1 ? pack : pluralOf(pack)} of ${size}`;
};

const denominators = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** Plain decimals where two places hold it, else a fraction: 1.5, 0.25, 2/3, 1 2/3. */
export const amountOf = (count: Decimal): string => {
  if (count.decimalPlaces() <= 2) return count.toFixed();
  const below = denominators.find((one) => count.times(one).minus(count.times(one).round()).abs().lessThan(decimal('1e-9')));
  if (below === undefined) return printNumber(count, 2);
  const whole = count.floor();
  const above = count.minus(whole).times(below).round();
  return whole.isZero() ? `${above.toFixed()}/${below}` : `${whole.toFixed()} ${above.toFixed()}/${below}`;
};

/** What a recipe line puts in one piece: "3", "2/3", "30 cm". */
export const amountWords = (amount: Amount): string => {
  if (amount.kind === 'stems') return amountOf(amount.stems);
  return amount.kind === 'cut' ? `${printNumber(amount.length, 2)} ${amount.unit}` : amount.words;
};

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
