// Sums a person wrote beside the prices they come from: "5 bouts @ $14 = $70, 2 corsages @ $30 = $60, total $130". They check, and price nothing further.

import { decimal } from '../../values/decimal.ts';
import type { Reader } from '../phrase.ts';
import { isSingle } from '../text/token.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf } from './read-order.ts';

interface PricedLine {
  readonly count: number;
  readonly unit: Price;
  readonly to: number; // where the next line begins
}

const exact = (price: Price): boolean => isSingle(price.number);

// Each counted line with the first price behind its name.
const pricedLines = (mentions: readonly Mention[], prices: readonly Price[]): PricedLine[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined && mention.count?.number?.max === undefined);
  return lines.flatMap((line, at) => {
    const to = lines[at + 1]?.start ?? Number.MAX_SAFE_INTEGER;
    const unit = prices.find((price) => price.index >= line.start && price.index < to && price.per !== 'all' && exact(price));
    return unit === undefined ? [] : [{ count: countOf(line).count, unit, to }];
  });
};

/** The prices without the sums among them, and those sums; what follows "=" behind all lines and is what they come to is their total. */
export const withoutCheckSums = (
  { tokens }: Reader,
  mentions: readonly Mention[],
  prices: readonly Price[],
): { prices: Price[]; sums: Price[] } => {
  const lines = pricedLines(mentions, prices);
  const of = ({ count, unit }: PricedLine) => decimal(unit.number.amount).times(count);
  const isProduct = (price: Price): boolean =>
    exact(price) &&
    lines.some(
      (line) =>
        line.count > 1 &&
        price !== line.unit &&
        price.index > line.unit.index &&
        price.index < line.to &&
        price.piece === undefined &&
        of(line).equals(price.number.amount),
    );
  const sums = lines.length > 1 ? prices.filter(isProduct) : [];
  const whole = lines.length > 1 ? lines.map(of).reduce((sum, next) => sum.plus(next)) : undefined;
  const told = (price: Price): Price =>
    whole !== undefined &&
    price.per === 'unsaid' &&
    tokens[price.start - 1]?.text === '=' &&
    (whole.equals(price.number.amount) || (sums.length === lines.length && price === prices.at(-1)))
      ? { ...price, per: 'all' }
      : price;
  return { prices: prices.filter((price) => !sums.includes(price)).map(told), sums };
};
