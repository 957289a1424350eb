// A price said again with its tax, or without it: "30 buttonholes @ £8 plus VAT so £9.60", "R92 incl VAT (R80 excl)". It says nothing new, and is taken only where a known rate makes the one of the other.

import { allRates } from '../../handbook/tax-rates.ts';
import { type Decimal, decimal, zero } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Reader } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import { isSingle, type Token } from '../text/token.ts';
import { lastBefore } from './line-sums.ts';
import type { Price } from './price-at.ts';

const again = pattern(
  "(,|-)? (so|=|\\(|,|-|ie|i . e .|i . e|or|aka|that's|thats|which is|which makes|making it|makes it|makes|comes to|comes out at|works out at) (that's|thats|it's|its|so|=|is|to|at|just|about){0,2} <t:amount> (a|per|/)? (<each>|<all>|<piece>)? (all)?",
);
const sums = new Set(allRates.map(({ parts }) => parts.reduce((sum, { rate }) => sum.plus(rate), decimal(0)).toString()));
const known = [...sums].map((rate) => decimal(rate)).toSorted((a, b) => a.comparedTo(b));
const cent = decimal('0.005');

/** Whether the one is the other with tax on it, or (with `count`) so many of them. */
const agrees = (net: string, gross: string, rate: string | undefined, counts: readonly number[]): boolean =>
  counts.some((count) => {
    const untaxed = decimal(net).times(count);
    const allowed = rate === undefined ? known : [decimal(rate)];
    const taxed = (percent: Decimal): Decimal => untaxed.times(percent.plus(100)).dividedBy(100).minus(gross);
    // Most numbers are out of reach of all rates.
    if (taxed(allowed[0] ?? zero).gt(cent) || taxed(allowed.at(-1) ?? zero).lt(cent.neg())) return false;
    return allowed.some((percent) => taxed(percent).abs().lessThanOrEqualTo(cent));
  });

const isOne = (token: Token | undefined): boolean => token?.number !== undefined && isSingle(token.number);

// "£240 plus VAT, so £288 all in", "€40 + VAT which makes €49.20 each": what the second is for, the first is for.
const per = (tokens: readonly Token[], price: Price): Price['per'] =>
  price.per !== 'unsaid'
    ? price.per
    : tokens.some(({ means }) => means['each'] !== undefined || means['piece'] !== undefined)
      ? 'each'
      : tokens.some(({ means }) => means['all'] !== undefined)
        ? 'all'
        : 'unsaid';

interface Taxed {
  readonly tokens: readonly number[];
  readonly price: Price;
}

/** Each price that is said again so, and the tokens that say it. */
export const taxedAgain = (reader: Reader, counts: ReadonlySet<number>, prices: readonly Price[]): readonly Taxed[] => {
  const { tokens } = reader;
  if (prices.length === 0 || !again.might(tokens)) return [];
  return prices.flatMap((price) => {
    const tax = isOne(tokens[price.index]) ? taxAt(reader, price.end) : undefined;
    const match = tax === undefined ? undefined : again.at(tokens, tax.match.end, tokens.length);
    const told = match?.kept['t'];
    // "12.50 ea + tax, 14 march": the day's number is no price.
    if (tax === undefined || match === undefined || !isOne(told) || !allFree(reader, match.start, match.end)) return [];
    const place = lastBefore(counts, price.index);
    const many = place === undefined || !isOne(tokens[place]) ? [] : [Number(tokens[place]?.number?.amount)];
    const [net, gross] = [price.number.amount, told?.number?.amount ?? '0'];
    const same = tax.fact.basis === 'on top' ? agrees(net, gross, tax.fact.rate, [1]) : agrees(gross, net, tax.fact.rate, [1]);
    const rate = tax.fact.basis === 'on top' ? tax.fact.rate : '0';
    if (!same && (price.per === 'all' || !(agrees(net, gross, rate, many) || agrees(net, gross, '0', many)))) return [];
    const other = taxAt(reader, match.end);
    const end = (other !== undefined && other.fact.basis !== tax.fact.basis ? other.match.end : match.end) - 1;
    const closed = tokens[end + 1]?.text === ')' ? end + 1 : end;
    const said = Array.from({ length: closed - match.start + 1 }, (_, at) => match.start + at);
    return [{ tokens: said, price: { ...price, per: same ? per(tokens.slice(match.start, match.end), price) : 'each' } }];
  });
};
