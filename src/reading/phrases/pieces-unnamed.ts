// "40 at 25 inc vat": so many at a price, and nobody says of what. In a thread of one kind it is that; else it is asked.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { priceEach } from '../order/price-each.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isNumber, type NumberRead, type Token } from '../text/token.ts';
import { taxAt } from './tax-basis.ts';

const form = pattern("(ok|so|say|hi|hey|and|now|it's|its|we|need|want|,){0,3} <n:count> (at|@) <p:amount> (<e:each>)?");
const usual: readonly PieceKind[] = ['buttonhole', 'corsage', 'flower crown'];
const latest = 12; // "2 at 3": up to here it may be an hour

const isAside = ({ means, text, kind }: Token): boolean =>
  kind === 'sign' || means['material'] !== undefined || /^(all|please|pls|thanks|ta|then|x|for|them|now)$/.test(text);

/** Whether what stands behind is tax, material or courtesy; and whether any of it is tax. */
const behind = (reader: Reader, from: number, end: number): { readonly clean: boolean; readonly taxed: boolean } => {
  let taxed = false;
  let index = from;
  while (index < end) {
    const tax = taxAt(reader, index);
    if (tax === undefined && !isAside(reader.tokens[index] as Token)) return { clean: false, taxed };
    taxed ||= tax !== undefined;
    index = tax?.match.end ?? index + 1;
  }
  return { clean: true, taxed };
};

const readPart = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens, context } = reader;
  const match = form.at(tokens, part.start, part.end);
  const { n, p, e } = match?.kept ?? {};
  if (match === undefined || n === undefined || p?.number === undefined || p.number.max !== undefined || n.number?.max !== undefined)
    return undefined;
  const { clean, taxed } = behind(reader, match.end, part.end);
  const sure = isNumber(p, 'money') || e !== undefined || taxed || Number(p.number.amount) > latest;
  if (!clean || !sure || Number(n.number?.amount) < 2) return undefined;
  const price: NumberRead = p.number;
  const words = reader.words(match.start, match.end);
  const of = (piece: PieceKind): Fact => ({
    fact: 'pieces',
    piece,
    count: Number(n.number?.amount),
    price: priceEach(price),
    words,
  });
  const asked = context.open?.kind === 'missing' && context.pieces.length === 0 ? context.open.piece : undefined;
  const [only, another] = asked === undefined ? context.pieces : [asked];
  const takes = { start: match.start, end: match.end };
  if (only !== undefined && another === undefined) return { ...takes, facts: [of(only)] };
  const kinds = another === undefined ? usual : context.pieces;
  return {
    ...takes,
    asks: [{ about: 'piece', why: 'which piece', words, choices: kinds.map((piece) => ({ words: piece, facts: [of(piece)] })) }],
  };
};

const find = (reader: Reader): Finding[] => reader.untouched().flatMap((part) => (part.asked ? [] : (readPart(reader, part) ?? [])));

export const piecesUnnamed: Phrase = { name: 'pieces unnamed', examples: [], find };
