// What stands beneath the items of a quote sheet: subtotals, tax, totals, and what was paid of them.

import { type Decimal, decimal } from '../../values/decimal.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { isSingle, type NumberRead, type Token } from '../text/token.ts';
import { paymentWords } from '../words/service-words.ts';

export interface Total extends Stretch {
  readonly is: 'total';
  readonly amount: Decimal;
  readonly number: NumberRead;
  readonly taxed: 'included' | 'on top' | undefined; // "Total incl VAT", "Total excl VAT"
  readonly taxName?: string;
  readonly ofPieces: boolean; // "Total 14 pcs"
  readonly sub: boolean; // a subtotal
}
export interface TaxLine extends Stretch {
  readonly is: 'tax';
  readonly name?: string;
  readonly rate?: string;
  readonly amount?: Decimal;
  readonly said: 'included' | 'on top' | undefined;
}
/** A deposit, a payment or how long the quote holds: nobody's price and no day of the event's. */
export interface Payment extends Stretch {
  readonly is: 'payment';
}
export type Sum = Total | TaxLine | Payment;

const opensTotal = /^((sub|grand|order|quote|invoice|estimate|net|gross|overall|,|=|-) ){0,2}(-? ?)(total|totals|subtotal|subtotals|sum)\b/;
const ofEvent = /^(wedding|event|ceremony|party|date)$/;
const occasion = /^(wedding|event|ceremony|party|function)$/;

interface Said {
  readonly amounts: readonly NumberRead[];
  readonly rates: readonly string[];
  readonly other: boolean; // numbers of another kind
  readonly tax: Token | undefined;
  readonly taxAt: number;
  readonly basis: 'included' | 'on top' | undefined;
}

const saidIn = (tokens: readonly Token[], { start, end }: Stretch): Said => {
  const amounts: NumberRead[] = [];
  const rates: string[] = [];
  let [other, tax, taxAt, basis] = [false, undefined as Token | undefined, end, undefined as Said['basis']];
  for (let index = start; index < end; index++) {
    const token = tokens[index] as Token;
    const { number, means } = token;
    if (number !== undefined) {
      if (!isSingle(number) || !/^(plain|money|percent)$/.test(number.form)) other = true;
      else if (number.form === 'percent') rates.push(number.amount);
      else amounts.push(number);
    }
    if (tax === undefined && (means.taxName !== undefined || means.taxWord !== undefined)) [tax, taxAt] = [token, index];
    // "NOT included yet" is on top.
    const denied = /^(not|yet|isn't|isnt)$/.test(tokens[index - 1]?.text ?? '');
    if (basis === undefined)
      basis = means.onTop !== undefined ? 'on top' : means.included === undefined ? undefined : denied ? 'on top' : 'included';
  }
  return { amounts, rates, other, tax, taxAt, basis };
};

const isPayment = (tokens: readonly Token[], { start, end }: Stretch): boolean => {
  let [pays, numbers] = [false, false];
  for (let index = start; index < end; index++) {
    const { text, number, means } = tokens[index] as Token;
    if (means.piece !== undefined && means.piece !== 'unspecified') return false;
    if (occasion.test(text)) return false;
    if (number !== undefined) numbers = true;
    if (paymentWords.has(text) || (text === 'valid' && /^(until|till|for|to)$/.test(tokens[index + 1]?.text ?? ''))) pays = true;
    if (text === 'hold' && /^the$/.test(tokens[index + 1]?.text ?? '') && ofEvent.test(tokens[index + 2]?.text ?? '')) pays = true;
  }
  return pays && numbers;
};

const longest = 14; // tokens

/** What a sentence or line beneath the items tells of sums; undefined where it tells of none. */
export const sumIn = ({ tokens }: Reader, part: Stretch): Sum | undefined => {
  const { start, end } = part;
  if (isPayment(tokens, part)) return { is: 'payment', ...part };
  if (end - start > longest) return undefined;
  const words = tokens
    .slice(start, end)
    .map(({ text }) => text)
    .join(' ');
  const { amounts, rates, other, tax, taxAt, basis } = saidIn(tokens, part);
  const [amount, second] = amounts;
  const name = tax?.means.taxName;
  if (opensTotal.test(words) && amount !== undefined && second === undefined && !other) {
    const ofPieces =
      amount.form === 'plain' && tokens.slice(start, end).some(({ text }) => /^(pcs?|pieces?|items?|nos|units?)$/.test(text));
    const named = { ...(name === undefined ? {} : { taxName: name }) };
    return {
      is: 'total',
      ...part,
      amount: decimal(amount.amount),
      number: amount,
      taxed: tax === undefined ? undefined : basis,
      ofPieces,
      sub: /\bsub ?-? ?total/.test(words),
      ...named,
    };
  }
  const opens = tax !== undefined && taxAt - start <= 3 && !/^(all|prices?|everything|they|it)$/.test(tokens[start]?.text ?? '');
  const ofTax = opens && !other && second === undefined && rates.length <= 1 && (amount !== undefined || rates.length === 1);
  if (!ofTax || tokens.slice(start, end).some(({ means }) => means.piece !== undefined)) return undefined;
  const [rate] = rates;
  return {
    is: 'tax',
    ...part,
    said: basis,
    ...(name === undefined ? {} : { name }),
    ...(rate === undefined ? {} : { rate }),
    ...(amount === undefined ? {} : { amount: decimal(amount.amount) }),
  };
};
