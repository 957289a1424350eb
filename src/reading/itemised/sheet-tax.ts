// Whether the lines of a quote sheet have tax in them, from how its sums stand to each other: lines of 100 and a total of 118 have it on top.

import { type Decimal, decimal, sum, zero } from '../../values/decimal.ts';
import type { Stretch } from '../text/message.ts';
import type { Sum, TaxLine, Total } from './sums.ts';

/** How a total stands to the lines above it. */
export type Stands = 'lines' | 'lines and tax' | 'unknown' | 'off';

const cents = (amount: Decimal): Decimal => amount.toDecimalPlaces(2);

export interface Summed {
  readonly item: Stretch;
  readonly sum: Decimal | undefined;
}

const sumOf = (lines: readonly Summed[]): Decimal | undefined => {
  const sums = lines.flatMap((line) => line.sum ?? []);
  return sums.length === lines.length && sums.length > 0 ? sum(sums) : undefined;
};

const taxIn = (lines: Decimal, taxes: readonly TaxLine[]): Decimal =>
  sum(taxes.map(({ amount, rate }) => amount ?? (rate === undefined ? zero : cents(lines.times(rate).dividedBy(100)))));

/** Of each total, whether it is what stands above it. */
export const standing = (lines: readonly Summed[], sums: readonly Sum[]): ReadonlyMap<Total, Stands> => {
  const stands = new Map<Total, Stands>();
  let since = 0;
  for (const total of sums) {
    if (total.is !== 'total') continue;
    const above = lines.filter(({ item }) => item.start < total.start);
    const [all, part] = [sumOf(above), sumOf(above.filter(({ item }) => item.start >= since))];
    const taxes = sums.filter((each): each is TaxLine => each.is === 'tax' && each.start < total.start);
    const equals = (amount: Decimal | undefined): boolean => amount?.equals(total.amount) === true;
    if (equals(all) || equals(part)) stands.set(total, 'lines');
    else if (all === undefined) stands.set(total, 'unknown');
    else stands.set(total, taxes.length > 0 && equals(all.plus(taxIn(all, taxes))) ? 'lines and tax' : 'off');
    since = total.start;
    // "Total excl VAT 16,792, Total incl VAT 19,310.80": where the first is the lines, the second needs no more.
    const untaxed = [...stands].some(([before, how]) => before.taxed === 'on top' && how === 'lines');
    if (stands.get(total) === 'off' && total.taxed === 'included' && untaxed && taxes.length === 0) stands.set(total, 'lines and tax');
  }
  return stands;
};

type Basis = 'included' | 'on top';

// A total above the tax and one below it tell, whatever the lines come to.
const between = (totals: readonly Total[], tax: TaxLine): Basis | undefined => {
  const above = totals.findLast(({ start }) => start < tax.start);
  const below = totals.find(({ start }) => start > tax.start);
  if (above === undefined || below === undefined || tax.amount === undefined) return undefined;
  return below.amount.equals(above.amount.plus(tax.amount)) ? 'on top' : below.amount.equals(above.amount) ? 'included' : undefined;
};

// A single tax whose sum is its rate of the lines goes on top of them; one that is that part of them is in them.
const byRate = (lines: Decimal | undefined, { rate, amount }: TaxLine): Basis | undefined => {
  if (lines === undefined || rate === undefined || amount === undefined) return undefined;
  const share = decimal(rate).dividedBy(100);
  if (cents(lines.times(share)).equals(amount)) return 'on top';
  return cents(lines.times(share).dividedBy(share.plus(1))).equals(amount) ? 'included' : undefined;
};

/** What the sums tell of tax; 'both' where they and their words disagree. */
export const taxOf = (lines: readonly Summed[], sums: readonly Sum[], stands: ReadonlyMap<Total, Stands>): Basis | 'both' | undefined => {
  const taxes = sums.filter((each): each is TaxLine => each.is === 'tax');
  const totals = sums.filter((each): each is Total => each.is === 'total');
  const all = sumOf(lines);
  const told = new Set<Basis>();
  const add = (basis: Basis | undefined): void => {
    if (basis !== undefined) told.add(basis);
  };
  if (totals.some((total) => stands.get(total) === 'lines and tax')) add('on top');
  if (taxes.length === 1) {
    const [tax] = taxes as [TaxLine];
    const last = totals.at(-1);
    if (last !== undefined && last.start > tax.start && stands.get(last) === 'lines' && tax.amount !== undefined) add('included');
    add(between(totals, tax) ?? byRate(all, tax));
  }
  for (const { said } of taxes) add(said);
  const untaxed = totals.filter(({ taxed }) => taxed === 'on top');
  for (const total of untaxed) if (stands.get(total) === 'lines') add('on top');
  if (untaxed.length === 0)
    for (const total of totals) if (total.taxed === 'included' && stands.get(total) === 'lines' && taxes.length === 0) add('included');
  // "Subtotal …, HST 13%": a tax beneath a subtotal is added to it.
  if (told.size === 0 && taxes.some(({ start }) => totals.some((total) => total.sub && total.start < start))) add('on top');
  const [basis, another] = told;
  return another === undefined ? basis : 'both';
};
