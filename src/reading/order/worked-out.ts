// A total with the price of one worked out beside it: "12 buttonholes £96 so 8 each". It is taken so only when the two agree.

import { decimal } from '../../values/decimal.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf } from './read-order.ts';

const ofOne = pattern(
  "(so|,|=|\\(|-|ie|i . e|i . e .|or|is|aka|meaning|makes|making){0,2} (it|that|which|so)? (that's|thats|it's|its|is|works out|works out at|comes to|comes out at|makes it|makes)? (just|only|about)? (at|to)? <u:amount> <each> (\\))?",
);

// "7 bouts, 5 halos, £8, £38 each": as many prices as kinds and nothing but a comma between, where none is what another comes to.
const isRow = (
  tokens: readonly Token[],
  lines: readonly Mention[],
  prices: readonly Price[],
  price: Price,
  { kept, start }: Match,
): boolean =>
  lines.length > 1 &&
  prices.length === lines.length &&
  tokens[start]?.text === ',' &&
  tokens[start + 1] === kept['u'] &&
  !lines.some((line) =>
    decimal(kept['u']?.number?.amount ?? 0)
      .times(countOf(line).count)
      .equals(price.number.amount),
  );

/** The prices, with "96 so 8 each" behind twelve pieces as one price of 8 each; where they do not agree, as a total and a price for one. */
export const withWorkedOut = ({ tokens }: Reader, mentions: readonly Mention[], prices: readonly Price[]): readonly Price[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  return prices.reduce<readonly Price[]>((settled, price) => {
    const match = price.per === 'each' || price.number.max !== undefined ? undefined : ofOne.at(tokens, price.end, tokens.length);
    const each = match?.kept['u'];
    if (match === undefined || each?.number === undefined || each.number.max !== undefined) return settled;
    const line = lines.findLast((mention) => mention.start < price.index);
    if (line === undefined) return settled;
    const { count, countMax } = countOf(line);
    if (countMax !== undefined || count < 2) return settled;
    if (isRow(tokens, lines, settled, price, match)) return settled;
    const others = settled.filter((other) => other !== price && (other.index < price.end || other.index >= match.end));
    const { currency, symbol } = price.number;
    const number: NumberRead = {
      ...each.number,
      form: 'money',
      ...(currency === undefined ? {} : { currency }),
      ...(symbol === undefined ? {} : { symbol }),
    };
    if (decimal(number.amount).times(count).equals(price.number.amount))
      return [...others, { ...price, end: match.end, per: 'each', number }];
    const one: Price = { index: tokens.indexOf(each), start: tokens.indexOf(each), end: match.end, per: 'each', number, at: false };
    return [...others, { ...price, per: 'all' }, one];
  }, prices);
};
