// What may stand behind an item's price beside its pack: "20% spare", "focal", "12 in stock", "3 days lead".

import { readRole } from '../../handbook/roles.ts';
import type { FactOf } from '../fact.ts';
import { namesTax } from '../text/of-tax.ts';
import { isSingle, type Token } from '../text/token.ts';

type Extras = Pick<FactOf<'pack'>, 'spare' | 'role' | 'stock' | 'leadDays'>;

const spareWord = /^(spare|spares|extra|wastage|waste|breakage)$/;
const plantPart = /^(focal|filler|foliage|texture|line)s?$/;
const before = /^(,|\(|-|role|as|a|is|for)$/;

const plain = (token: Token | undefined): number | undefined =>
  token?.number?.form === 'plain' && isSingle(token.number) && Number.isInteger(Number(token.number.amount))
    ? Number(token.number.amount)
    : undefined;

const days = (token: Token | undefined): number | undefined => {
  const number = token?.number;
  if (number?.form !== 'duration' || !/^(day|week)$/.test(number.unit ?? '')) return undefined;
  return Number(number.max ?? number.or?.at(-1) ?? number.amount) * (number.unit === 'week' ? 7 : 1);
};

const isPercent = (token: Token | undefined): boolean => token?.number?.form === 'percent' && isSingle(token.number);

/** The words are marked as used, so that no name, size or price is read from them. */
export const itemExtras = (
  tokens: readonly Token[],
  start: number,
  end: number,
): { readonly extras: Extras; readonly used: readonly number[] } => {
  const used: number[] = [];
  let extras: Extras = {};
  const take = (from: number, to: number, more: Extras): void => {
    extras = { ...extras, ...more };
    for (let index = from; index < to; index++) used.push(index);
  };
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    const next = index + 1 < end ? tokens[index + 1] : undefined;
    const afterNext = index + 2 < end ? tokens[index + 2] : undefined;
    // "gst 5% extra" is no spare.
    if (isPercent(token) && !namesTax(tokens[index - 1]) && spareWord.test(next?.text ?? ''))
      take(index, index + 2, { spare: token?.number?.amount ?? '' });
    else if (isPercent(next) && spareWord.test(token?.text ?? '') && !spareWord.test(afterNext?.text ?? ''))
      take(index, index + 2, { spare: next?.number?.amount ?? '' });
    else if (plain(token) !== undefined && next?.text === 'in' && /^(stock|hand)$/.test(afterNext?.text ?? ''))
      take(index, index + 3, { stock: plain(token) ?? 0 });
    // "10-12 in stock": how many is not said, and the flower is no stock.
    else if (token?.number?.form === 'plain' && next?.text === 'in' && /^(stock|hand)$/.test(afterNext?.text ?? ''))
      take(index, index + 3, {});
    else if (days(token) !== undefined && /^(lead|leadtime)$/.test(next?.text ?? ''))
      take(index, afterNext?.text === 'time' ? index + 3 : index + 2, { leadDays: days(token) ?? 0 });
    else if (/^(lead|leadtime)$/.test(token?.text ?? '') && days(next) !== undefined) take(index, index + 2, { leadDays: days(next) ?? 0 });
    else if (token?.text === 'lead' && next?.text === 'time' && days(afterNext) !== undefined)
      take(index, index + 3, { leadDays: days(afterNext) ?? 0 });
    // The trade's word for its part stands alone behind the price: "hair line wire" has none.
    else if (
      index > start &&
      plantPart.test(token?.text ?? '') &&
      before.test(tokens[index - 1]?.text ?? '') &&
      (index + 1 === end || /^(,|\))$/.test(next?.text ?? ''))
    )
      take(index, index + 1, { role: readRole(token?.text ?? '') ?? '' });
  }
  return { extras, used };
};
