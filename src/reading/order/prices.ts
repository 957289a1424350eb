// Finds every price in a message and whether it is said to be for each, for all, or neither; and whether it is a floor, a ceiling or a budget.

import type { PieceKind } from '../../handbook/pieces.ts';
import { isA, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';

export interface Price {
  readonly index: number; // the number
  readonly start: number;
  readonly end: number;
  readonly number: NumberRead;
  readonly per: 'each' | 'all' | 'unsaid';
  readonly kind?: 'from' | 'up to' | 'budget';
  readonly at: boolean; // "@ 25", "at 25"
  readonly piece?: PieceKind; // "12 per bout", "28 for the corsages", "$12 bouts"
  readonly pieceIndex?: number;
  readonly named?: boolean; // beside a kind of piece with no number: "bouts $18"
  readonly forCount?: boolean; // "1100 for 44 lapels"
}

const eachAfter = pattern('(,)? (<upTo>|<budget>|<from>)? (\\( )? (<each>|for each) (\\))? (<upTo>|<from>)?');
const perPieceAfter = pattern('(/|per|a|an|for a|for an|each) <piece:piece>');
const eachBefore = ['each', 'ea', 'apiece'];
const allAfter = pattern('(,)? (<upTo>|<budget>)? (\\( )? (<all>|for (all|the) <n:count>|for everyone) (\\))?');
const forPieces = pattern('for (the|all|all the|about)? <n:count> (x|of|of the|of them)? <any>{0,3} <piece>');
const forNamed = pattern('(each)? (for|on) (the|each|all the|every|a)? <any>{0,2} <piece:piece>');
const kindAfter = pattern('(is|as)? (the|our|her|his|my|their|a)? (<k:upTo>|<k:budget>|<k:from>)');
const kindBefore = pattern(
  '(<k:upTo>|<k:budget>|<k:from>) (is|of|about|around|:|at|for|are|around about|=|was|only)? (is)? (about|around|only)?',
);
const allBefore = pattern(
  '(<a:all>|comes to|works out at|it all|the whole lot|whole order|paying|paid|invoice) (is|of|:|=|should be|should have been|will be|was|comes to|price|cost|would be|now|at|for|budget|around|about|to)? (to|of|is|about)?',
);
const atBefore = ['@', 'at'];

const kindOf = (token: Token | undefined): Price['kind'] =>
  token === undefined ? undefined : token.means['budget'] !== undefined ? 'budget' : token.means['upTo'] !== undefined ? 'up to' : 'from';

const endsThere = (tokens: readonly Token[], end: number): boolean => {
  const next = tokens[end];
  return (
    next === undefined ||
    next.kind !== 'word' ||
    ['included', 'onTop', 'material', 'taxName', 'taxWord'].some((tag) => next.means[tag] !== undefined)
  );
};

const endingAt = (reader: Reader, pat: ReturnType<typeof pattern>, index: number, reach: number) => {
  for (let start = Math.max(0, index - reach); start < index; start++) {
    const match = pat.at(reader.tokens, start, index);
    if (match?.end === index && reader.free(start)) return match;
  }
  return undefined;
};

const priceAt = (reader: Reader, index: number): Price | undefined => {
  const { tokens } = reader;
  const token = tokens[index];
  const number = token?.number;
  if (token === undefined || number === undefined || !reader.free(index) || !(number.form === 'money' || number.form === 'plain'))
    return undefined;
  let start = index;
  let end = index + 1;
  let per: Price['per'] = 'unsaid';
  let kind: Price['kind'];
  let piece: PieceKind | undefined;
  let pieceIndex: number | undefined;
  let forCount = false;
  const before = endingAt(reader, kindBefore, index, 5);
  if (before !== undefined) {
    kind = kindOf(before.kept['k']);
    start = before.start;
  }
  const allHead = endingAt(reader, allBefore, start, 4);
  const each = eachAfter.at(tokens, end, tokens.length);
  const perPiece = perPieceAfter.at(tokens, end, tokens.length);
  const all = allAfter.at(tokens, end, tokens.length);
  const pieces = forPieces.at(tokens, end, tokens.length);
  const negated = tokens[end]?.text === 'not';
  if (perPiece !== undefined && !negated) {
    per = 'each';
    piece = perPiece.kept['piece']?.means['piece'] as PieceKind;
    pieceIndex = perPiece.end - 1;
    end = perPiece.end;
  } else if (each !== undefined) {
    per = 'each';
    end = each.end;
  } else if (all !== undefined) {
    per = 'all';
    end = all.end;
  } else if (pieces !== undefined) {
    forCount = true;
    per = 'unsaid';
  }
  if (allHead !== undefined && per === 'unsaid') {
    per = 'all';
    start = allHead.start;
    forCount = false;
  }
  const previous = tokens[start - 1];
  const at = previous !== undefined && atBefore.includes(previous.text);
  if (at) start -= 1;
  const ahead = tokens[start - 1];
  if (per === 'unsaid' && ahead !== undefined && eachBefore.includes(ahead.text) && reader.free(start - 1)) {
    per = 'each';
    start -= 1;
  }
  // "the lot for $450", "35 buttonholes for 500"
  if (per === 'unsaid' && previous?.text === 'for' && endsThere(tokens, end)) {
    forCount = true;
    start -= 1;
  }
  const named = forNamed.at(tokens, end, tokens.length);
  if (named !== undefined && pieces === undefined && per !== 'all') {
    piece ??= named.kept['piece']?.means['piece'] as PieceKind;
    pieceIndex ??= named.end - 1;
  } else if (isA(tokens[end] ?? token, 'piece') && number.form === 'money' && per === 'unsaid' && end === index + 1) {
    piece = tokens[end]?.means['piece'] as PieceKind;
    pieceIndex = end;
  }
  const after = kindAfter.at(tokens, end, tokens.length);
  if (kind === undefined && after !== undefined && !isA(tokens[after.end] ?? token, 'amount')) {
    kind = kindOf(after.kept['k']);
    end = after.end;
  }
  return {
    index,
    start,
    end,
    number,
    per,
    at,
    ...(kind === undefined ? {} : { kind }),
    ...(piece === undefined ? {} : { piece }),
    ...(pieceIndex === undefined ? {} : { pieceIndex }),
    ...(forCount ? { forCount: true } : {}),
  };
};

// A number without a unit is a price only where the words say so: each, all, at, budget, or a tax word right behind it.
const taxBehind = pattern('(<included>|(plus|+) <tax>|<tax>|(ex|excl|excluding|before|net|exclusive) )');
const isPrice = (reader: Reader, price: Price): boolean => {
  if (price.number.form === 'money') return true;
  if (price.per !== 'unsaid' || price.at || price.kind !== undefined || price.forCount === true) return true;
  return taxBehind.at(reader.tokens, price.end, reader.tokens.length) !== undefined;
};

// "600 per day" and "25 an hour" price time, not pieces.
const perTime = pattern('(per|a|an|/|p) (/)? (day|hour|hr|h|week|wk|month|year|km|mile|night|shift|kg|m|metre|bunch|box|roll|stem|wrap)');

// "100 lapels, 8.50": a number right behind a counted piece can only be its price.
const behindPiece = (reader: Reader, index: number, pieceEnds: ReadonlySet<number>): boolean => {
  let at = index - 1;
  while (
    at > 0 &&
    index - at <= 3 &&
    (reader.tokens[at]?.text === ',' ||
      reader.tokens[at]?.text === '-' ||
      /^(lads|guys|pls|please|dried|fresh|folks)$/.test(reader.tokens[at]?.text ?? ''))
  )
    at -= 1;
  const next = reader.tokens[index + 1];
  return (
    pieceEnds.has(at) &&
    (next === undefined ||
      next.kind !== 'word' ||
      Object.keys(next.means).some((tag) => ['material', 'included', 'onTop', 'taxName', 'taxWord', 'all', 'each'].includes(tag)))
  );
};

/** Every price that no earlier phrase has read. `counts` are the numbers already taken as counts. */
export const findPrices = (reader: Reader, counts: ReadonlySet<number>, pieceEnds: ReadonlySet<number> = new Set()): Price[] => {
  const prices: Price[] = [];
  for (let index = 0; index < reader.tokens.length; index++) {
    if (counts.has(index)) continue;
    const price = priceAt(reader, index);
    if (price === undefined || perTime.at(reader.tokens, index + 1, reader.tokens.length) !== undefined) continue;
    if (isPrice(reader, price) || behindPiece(reader, index, pieceEnds)) prices.push(price);
  }
  return prices;
};
