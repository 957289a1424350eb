// What a quote sheet states: the pieces of each line at their own price, and the tax.

import { decimal, sum } from '../../values/decimal.ts';
import { currencyFields } from '../order/read-order.ts';
import type { Unworded } from '../phrase.ts';
import type { NumberRead } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';
import type { Piece } from './item-lines.ts';
import type { Sheet } from './sheet.ts';
import type { TaxLine, Total } from './sums.ts';

type Money = ReturnType<typeof currencyFields>;

/** The money of the lines that name none: the heading's, or that of the others, where it is one. */
export const moneyOf = ({ items, heading, sums }: Sheet): Money => {
  const said = [
    ...items.flatMap((item) => (item.is === 'strange' ? [] : Object.values(item.figures ?? {}))),
    ...sums.flatMap((each) => (each.is === 'total' ? [each] : [])),
  ].flatMap((figure) => (typeof figure === 'object' ? [figure.number] : []));
  if (heading?.currency !== undefined) return { currency: heading.currency };
  const codes = [...new Set(said.flatMap(({ currency }) => currency ?? []))];
  const [code, another] = codes;
  if (code !== undefined) return another === undefined ? { currency: code } : {};
  const symbol = heading?.symbol ?? said.find((number) => number.symbol !== undefined)?.symbol;
  return symbol === undefined ? {} : { symbol };
};

const fieldsOf = (number: NumberRead, shared: Money): Money =>
  number.currency === undefined && (number.symbol === undefined || shared.currency !== undefined) ? shared : currencyFields(number);

export const pieceFact = ({ worn, figures }: Piece, bare: Sheet['bare'], shared: Money): Unworded => {
  const count = Number(figures.count?.number.amount ?? 1);
  const each = figures.each ?? (bare === 'each' ? figures.either : undefined);
  const price = each ?? figures.line ?? figures.either;
  return {
    fact: 'pieces',
    piece: worn.kind,
    count,
    ...(price === undefined
      ? {}
      : {
          price: {
            amount: price.number.amount,
            per: each !== undefined || count === 1 ? 'each' : 'line',
            ...fieldsOf(price.number, shared),
          },
        }),
    ...(worn.material === undefined ? {} : { material: worn.material }),
    ...(worn.wearer === undefined ? {} : { wearer: nameOf(worn.wearer, count) }),
  };
};

/** The tax that the sums tell of; of two different taxes only that they go on top. */
export const taxFact = (basis: 'included' | 'on top', taxes: readonly TaxLine[], totals: readonly Total[]): Unworded => {
  const names = [...new Set(taxes.length > 0 ? taxes.map(({ name }) => name) : totals.flatMap(({ taxName }) => taxName ?? []))];
  const [name] = names;
  if (names.length > 1) return { fact: 'tax', basis };
  const rates = taxes.flatMap(({ rate }) => rate ?? []);
  const whole = rates.length > 0 && rates.length === taxes.length;
  return {
    fact: 'tax',
    basis,
    ...(name === undefined ? {} : { name }),
    ...(whole ? { rate: sum(rates.map((rate) => decimal(rate))).toString() } : {}),
  };
};

/** What all of it comes to, where nothing but pieces stands on the sheet and the total is of its lines as they are. */
export const wholeFact = (sheet: Sheet, total: Total): readonly Unworded[] => {
  const last = sheet.sums.findLast((each) => each.is === 'total' && !each.ofPieces);
  const whole = last === total && !total.sub && sheet.stands.get(total) === 'lines' && sheet.items.every(({ is }) => is === 'piece');
  return whole ? [{ fact: 'price', amount: total.number.amount, per: 'all', ...fieldsOf(total.number, moneyOf(sheet)) }] : [];
};
