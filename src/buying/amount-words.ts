// What goes into one piece, as people say it and as every sheet and reply shows it: "3", "2/3", "30 cm".

import { type Decimal, decimal } from '../values/decimal.ts';
import { printNumber } from '../values/money.ts';
import type { Amount } from './recipe-lines.ts';

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
