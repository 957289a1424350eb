// A price as somebody said it: a range stays a range, another currency its own, a bare sign a sign.

import type { FactOf } from '../../reading/fact.ts';
import { decimal } from '../../values/decimal.ts';
import { printMoney, printNumber } from '../../values/money.ts';
import type { Manner } from '../answer.ts';

type Said = Pick<FactOf<'price'>, 'amount' | 'amountMax' | 'amounts' | 'currency' | 'symbol' | 'kind'>;

/** In the studio's money where nothing else was said; never converted, never rounded. */
const amountSaid = (amount: string, { currency, symbol }: Said, { money }: Manner): string => {
  if (currency !== undefined) return printMoney(decimal(amount), currency);
  return symbol === undefined || money(amount).includes(symbol) ? money(amount) : `${symbol}${printNumber(decimal(amount))}`;
};

const kinds = { from: 'from ', 'up to': 'up to ', budget: 'a budget of ' } as const;

/** "£9.50", "$17 to $20", "£18.00 or £22.00", "a budget of £1,450.00". */
export const priceSaid = (said: Said, manner: Manner): string => {
  const one = (amount: string): string => amountSaid(amount, said, manner);
  const amounts =
    said.amounts?.map(one).join(' or ') ?? [said.amount, ...(said.amountMax === undefined ? [] : [said.amountMax])].map(one).join(' to ');
  return `${said.kind === undefined ? '' : kinds[said.kind]}${amounts}`;
};
