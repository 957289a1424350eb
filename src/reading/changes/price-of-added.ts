// "And 2 corsages 30" behind an order: a number alone behind what is added is the price of each where all of them could not cost so little.
// Where both could be, it is asked; where neither could, it stays unread.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Finding, Reader, Unworded } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import { isSingle } from '../text/token.ts';
import { couldBePrice } from './now-count-or-price.ts';

/** The price of what a difference adds, and how far its words reach. */
export interface Own {
  readonly facts: readonly Unworded[];
  readonly end: number;
  readonly asks?: readonly Ask[];
}

interface Added {
  readonly match: Match;
  readonly piece: PieceKind;
  readonly count: number;
}

const alone = pattern('(,|-)? <a:plain> (please|pls|thanks|ta|too|as well|,){0,3}');
const cents = 100;

export const numberAlone = ({ tokens, words }: Reader, { match, piece, count }: Added, end: number): Own | undefined => {
  const read = alone.at(tokens, match.end, end);
  const number = read?.kept['a']?.number;
  if (read?.end !== end || number === undefined || number.max !== undefined || number.or !== undefined) return undefined;
  const { amount } = number;
  const each: Unworded = { fact: 'price', amount, per: 'each', piece };
  const one = Number(amount) / count;
  if (!couldBePrice(piece, Number(amount))) return undefined;
  if (count === 1 || !couldBePrice(piece, one)) return { facts: [each], end };
  if (!Number.isInteger((Number(amount) * cents) / count)) return undefined;
  const said = words(match.start, end);
  const choice = (say: string, price: Unworded) => ({ words: say, facts: [{ ...price, words: said } as Fact] });
  const choices = [choice(`${amount} each`, each), choice(`${amount} for all ${count}`, { ...each, amount: String(one) })];
  return { facts: [], end, asks: [{ about: 'price', why: 'each or all', words: amount, choices }] };
};

// "5 more but those at 12": of the kind they are, or of the only one the thread holds.
const those = pattern(
  '(,|-)? (but|and|with|though|only)? (those|these|the extra|the extras|the extra ones|the new ones|the added ones|for those|for these|the others) (ones)? (are|is|to be|will be|go|should be|can be|just|only){0,2} (at|@|for|:)? <a:amount> (<each>)? (please|pls|thanks|ta|,){0,2}',
);
export const priceOfThose = ({ tokens, context }: Reader, start: number, end: number, piece: PieceKind | undefined): Own | undefined => {
  const read = those.at(tokens, start, end);
  const number = read?.kept['a']?.number;
  const [only, second] = context.pieces;
  const of = piece ?? (second === undefined ? only : undefined);
  if (read?.end !== end || number === undefined || !isSingle(number) || of === undefined || of === 'unspecified') return undefined;
  return { facts: [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'each', piece: of }], end };
};

// "Swap one corsage for a wrist one at 34"
const atPrice = pattern('(at|@|for) <a:amount> (<each>)? (please|pls|thanks|ta|instead|,){0,2}');
export const priceOfSwapped = ({ tokens }: Reader, start: number, end: number, piece: PieceKind): Own | undefined => {
  const read = atPrice.at(tokens, start, end);
  const number = read?.kept['a']?.number;
  if (read === undefined || number === undefined || !isSingle(number)) return undefined;
  if (number.form !== 'money' && !couldBePrice(piece, Number(number.amount))) return undefined;
  return { facts: [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'each', piece }], end: read.end };
};

export const withAsks = (finding: Finding, own: Own | undefined): Finding => (own?.asks ? { ...finding, asks: own.asks } : finding);
