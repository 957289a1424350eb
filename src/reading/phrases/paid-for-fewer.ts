// "25 bouts but only paying for 20": the lower number may be pieces the client pays for, all that is wanted, or a price. It is asked;
// where no kind is counted it is held.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { firstIn, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, type Phrase, type Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';

const some = '(about)? <a:count> (x)? (<material>)? <p:piece>';
const pay = '(pay|paying|pays|paid|charge|charging|charges|charged|bill|billing|billed|invoice|invoicing|invoiced)';
const whom = '(them|her|him|us|me|the client|the bride|client|only|just){0,2}';
const ofThem = '<o:word> (them|those|these|the <piece>|<piece>)';
const forms = [
  `${some} <any>{0,7} ${pay} ${whom} for ${whom} <b:plain> (${ofThem}|<o:piece>|only)?`,
  `${some} <any>{0,6} (only|just) ${pay} ${whom} <b:plain> (${ofThem}|<o:piece>)?`,
  `${some} <any>{0,6} <b:plain> (of them|of those)? (only)? (to be|are|being|get) (charged|billed|invoiced|paid) (for)?`,
  `${pay} ${whom} for ${whom} <b:plain> (out)? <o:word> (the|those|our|all)? <a:count> (<material>)? (<p:piece>)?`,
].map((source) => pattern(source));
const ends = /^([,.;]|and|but|so|as|cos|because|please|pls|thanks)$/;

// "for 20 inc vat": so little for all of them is hardly a price, and the tax may be told of the price they have already.
const isTax = ({ means }: Token): boolean => ['included', 'onTop', 'taxName', 'taxWord'].some((tag) => means[tag] !== undefined);

/** What they pay for, where it is less than what there is; "paying for 20 each" is a price. */
const lowerOf = ({ tokens }: Reader, match: Match, end: number): number | undefined => {
  const [many, few] = [match.kept['a']?.number, match.kept['b']?.number];
  const next = match.end < end ? tokens[match.end] : undefined;
  if (!isSingle(many) || !isSingle(few) || (next !== undefined && !ends.test(next.text) && !isTax(next))) return undefined;
  const [a, b] = [Number(many.amount), Number(few.amount)];
  return Number.isInteger(b) && b > 0 && b < a ? b : undefined;
};

const findIn = (reader: Reader, { start, end, asked }: Part): readonly Finding[] => {
  const match = asked ? undefined : firstIn(forms, reader.tokens, start, end);
  if (match === undefined || !allFree(reader, match.start, match.end)) return [];
  const fewer = lowerOf(reader, match, end);
  if (fewer === undefined) return [];
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  if (piece === undefined) return [{ start: match.start, end: match.end, held: true }];
  const words = reader.words(match.start, match.end);
  const many = Number(match.kept['a']?.number?.amount);
  const order = (count: number): Fact => ({ fact: 'pieces', piece, count, words });
  const price = (per: 'each' | 'all'): Fact => ({ fact: 'price', amount: String(fewer), per, words });
  const choices: Choice[] = [
    { words: soMany(many), facts: [order(many)] },
    { words: soMany(fewer), facts: [order(fewer)] },
  ];
  // "for 20 of them" counts.
  if (match.kept['o'] === undefined)
    choices.push(
      { words: `${fewer} each`, facts: [order(many), price('each')] },
      { words: `${fewer} for all of it`, facts: [order(many), price('all')] },
    );
  return [{ start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] }];
};

const find = (reader: Reader): Finding[] =>
  forms.some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => findIn(reader, part)) : [];

export const paidForFewer: Phrase = { name: 'paid for fewer', examples: [], find };
