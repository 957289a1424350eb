// "crowns should be 45 and combs 18": so many of each, or what each costs? Asked where both numbers could be prices; "bouts should be 18 and crowns 4" could not.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { couldBePrice, isRare } from './now-count-or-price.ts';

const lead = '(ok|so|sorry|actually|no|oh|and|the|our|,|-|update|oops){0,3}';
const is = '(at|to|now|:)?';
const form = pattern(
  `${lead} <p:piece> (are|is|should be|need to be|needs to be|ought to be|are now|is now|now) (now)? <n:count> (now)? (and|,|&|n|+|plus|-){1,2} (the|our)? <q:piece> (should be|are|is|need to be)? ${is} <m:count> (now|please|pls|thanks|ta|sorry){0,2}`,
);
const wanted = /^(be|should|need|ought)$/;

export const kindsNow = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = form.at(tokens, part.start, part.end);
  const { p, q, n, m } = match?.kept ?? {};
  if (match?.end !== part.end || [n, m].some((token) => isRangeOrChoice(token?.number))) return undefined;
  const said = [
    [p?.means['piece'] as PieceKind, n?.number?.amount ?? ''],
    [q?.means['piece'] as PieceKind, m?.number?.amount ?? ''],
  ] as const;
  if (!said.every(([piece, amount]) => couldBePrice(piece, Number(amount)))) return undefined;
  // "bouts should be 18 and corsages 20" says how many, as one of them would alone.
  const count = tokens.slice(match.start, match.end).some(({ text }) => wanted.test(text.split(' ')[0] ?? ''));
  if (count && !said.some(([piece, amount]) => isRare(piece, Number(amount)))) return undefined;
  const words = reader.words(part.start, part.end);
  const counts = said.map(([piece, amount]): Fact => ({ fact: 'change', what: 'count', to: Number(amount), piece, words }));
  const prices = said.map(([piece, amount]): Fact => ({ fact: 'change', what: 'price', to: amount, per: 'each', piece, words }));
  const choices = [
    { words: 'how many of each', facts: counts },
    { words: 'the price of each', facts: prices },
  ];
  return { start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};
