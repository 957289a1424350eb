// A kind that is ordered and a number alone, "corsages 32", "bouts 13.50"; of the only kind there is, "ok charge 17". Where it could be a price or
// a count it is asked; a number that could be neither stays unread.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { firstAt, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { isCount, isSingle } from '../text/token.ts';
import { couldBePrice } from './now-count-or-price.ts';

const lead = "(ok|so|oh|no|sorry|actually|yeah|right|then|and|we'll|well|i'll|ill|just|let's|lets|,|-|the|our){0,4}";
const tail = '(each|ea|please|pls|thanks|ta|then|tho|though|instead|sorry|,|.){0,3}';
const ofKind = pattern(`${lead} <p:piece> (are|is|at|:|=|-|should be){0,1} <a:amount> ${tail}`);
const charged = pattern(`${lead} (charge|charging) (them|her|him|it|the client)? (at)? <a:amount> ${tail}`);
const forms = [ofKind, charged];

const ask = (reader: Reader, { start, end }: Part, piece: PieceKind, amount: string): Finding => {
  const words = reader.words(start, end);
  const choice = (say: string, fact: Fact): Choice => ({ words: `${amount} ${say}`, facts: [fact] });
  const choices = [
    choice('pieces', { fact: 'change', what: 'count', to: Number(amount), piece, words }),
    choice('each', { fact: 'change', what: 'price', to: amount, per: 'each', piece, words }),
    choice('made', { fact: 'made', count: Number(amount), piece, words }),
  ];
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

export const kindAndNumber = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens, context, message } = reader;
  const { start, end } = part;
  if (message.parts.length > 1 || part.asked || context.pieces.length === 0) return undefined;
  const match = firstAt(forms, tokens, start, end);
  const [only, another] = context.pieces;
  const named = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const piece = match?.kept['p'] === undefined ? (another === undefined ? only : undefined) : named;
  const token = match?.kept['a'];
  const number = token?.number;
  if (match?.end !== end || piece === undefined || !context.pieces.includes(piece) || !allFree(reader, start, end)) return undefined;
  if (number === undefined || !isSingle(number) || piece === 'unspecified') return undefined;
  if (number.form !== 'money' && !couldBePrice(piece, Number(number.amount))) return undefined;
  const each = tokens.slice(start, end).some(({ means }) => means['each'] !== undefined);
  // "charge" tells of money, and so do pence and a currency.
  if (named !== undefined && !each && isCount(token)) return ask(reader, part, piece, number.amount);
  return found(reader, start, end, [{ fact: 'change', what: 'price', to: number.amount, per: 'each', ...currencyFields(number), piece }]);
};
