// "crowns are 60 now": sixty of them, or sixty each? Asked where the number could be a price of that kind; "crowns are 4 now" could not.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { soMany } from '../words/kind-words.ts';

// Common practice, no source: outside these a number is hardly what one piece costs.
const pricesOf: Readonly<Partial<Record<PieceKind, readonly [number, number]>>> = {
  buttonhole: [10, 30],
  corsage: [18, 75],
  'wrist corsage': [18, 75],
  'pin corsage': [18, 75],
  'flower crown': [30, 250],
  'hair flower': [10, 60],
};

const forms = [
  '(<p:piece>) (are|is|have gone|has gone|went|gone|going) (now|up|down|<upTo>|to|up to|down to){0,2} <n:count> now',
  '(<p:piece>) (are|is)? now (up|down|<upTo>|to){0,2} <n:count>',
  '(<p:piece>) (went|gone|have gone|has gone|going|go|gone up|went up|gone down|went down) (to|<upTo>|up to|down to) <n:count>',
  '(<p:piece>) (<upTo>|down to|up) <n:count> now',
  '(<p:piece>) (are|is) <n:count>', // "the crown is 75"
].map((source) => pattern(source));
// "make the crowns 65": so many crowns are rare, so it may be what one costs.
const rareForms = [
  pattern('(make|set|put|have|mark) (the|our|those)? <p:piece> (at|as)? <n:count>'),
  pattern('<p:piece> (should|need to|needs to|ought to) (now)? be <n:count>'),
];
const allForms = [...forms, ...rareForms];
const before = /^(the|our|and|ok|so|sorry|actually|no|,|-|those)$/;
const after = /^(please|pls|thanks|ta|,|-|sorry|\.|now|ok|lads|guys|team)$/;

// Common practice, no source: nobody orders so many of these that the number is no price.
const rare: Readonly<Partial<Record<PieceKind, number>>> = { 'flower crown': 40, corsage: 30, 'wrist corsage': 30, 'pin corsage': 30 };

/** Whether a number is so many of a kind that it may as well be what one costs. */
export const isRare = (piece: PieceKind, amount: number): boolean => amount >= (rare[piece] ?? Number.POSITIVE_INFINITY);

/** Whether one of this kind could cost so much. */
export const couldBePrice = (piece: PieceKind, amount: number): boolean => {
  const [least, most] = pricesOf[piece] ?? [1, 0];
  return amount >= least && amount <= most;
};

/** What to ask of a number that could be a price of this kind; nothing when it could not. */
export const countOrPrice = (reader: Reader, match: Match, piece: PieceKind, amount: string): Ask | undefined => {
  const said = Number(amount);
  if (!couldBePrice(piece, said)) return undefined;
  const words = reader.words(match.start, match.end);
  const asCount: Fact = { fact: 'change', what: 'count', to: said, piece, words };
  const asPrice: Fact = { fact: 'change', what: 'price', to: amount, per: 'each', piece, words };
  const choices = [
    { words: soMany(amount), facts: [asCount] },
    { words: `${amount} each`, facts: [asPrice] },
  ];
  return { about: 'count', why: 'which number', words, choices };
};

export const nowCountOrPrice = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  let from = part.start;
  while (from < part.end && before.test(tokens[from]?.text ?? '')) from += 1;
  for (const form of allForms) {
    const match = form.at(tokens, from, part.end);
    const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
    const number = match?.kept['n']?.number;
    if (match === undefined || piece === undefined || number === undefined || number.max !== undefined) continue;
    if (rareForms.includes(form) && !isRare(piece, Number(number.amount))) continue;
    const alone = tokens.slice(match.end, part.end).every((token) => after.test(token.text));
    const ask = alone ? countOrPrice(reader, match, piece, number.amount) : undefined;
    return ask === undefined ? undefined : { start: part.start, end: part.end, asks: [ask] };
  }
  return undefined;
};
