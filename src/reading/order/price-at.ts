// Reads the words around one number as a price: for each, for all, or neither said; a floor, a ceiling or a budget; and of which piece.

import type { PieceKind } from '../../handbook/pieces.ts';
import { isA, type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, type NumberRead, type Token } from '../text/token.ts';
import { allBehind, loneAll, wholeCapped } from './all-words.ts';
import { type Bundle, bundleBehind } from './bundles.ts';
import { isByPrice } from './by-price.ts';
import { coversAll } from './covers.ts';
import { eachBehind } from './each-behind.ts';
import { ofPeople } from './each-wearer.ts';
import { forKind } from './for-kinds.ts';
import { kindTold } from './kind-told.ts';
import { dozenBehind } from './per-dozen.ts';
import { endsThere } from './price-ends.ts';
import { kindAfter, kindBefore, kindOf, stronger } from './price-kind.ts';
import { countsThePriced, listsKinds, perPieceBehind } from './the-one-priced.ts';

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
  readonly bundle?: Bundle; // "60 the pair": for a few just counted
  readonly forCount?: boolean; // "1100 for 44 lapels"
  readonly ofCount?: string; // "160 for the 8"
  readonly told?: readonly number[]; // tokens apart from it that say what it is: "that's the budget"
}

// "25 inc each", "2800 inc gst for everything", "120 taxes in for the lot": the tax stands between.
const taxBetween = pattern('(plus|+|<included>|<onTop>|w|with|all)? (<tax>|<included>|<onTop>) (in|on top|added|<included>|<onTop>)? (,)?');
// "groom gets 2 plus a bout": the bout is beside them.
const joinsAPiece = (tokens: readonly Token[], { start, end }: Match): boolean =>
  end === start + 1 && /^(plus|\+)$/.test(tokens[start]?.text ?? '') && /^(a|an|the)$/.test(tokens[end]?.text ?? '');
const eachBefore = ['each', 'ea', 'apiece'];
const forPieces = pattern('for (the|all|all the|about)? <n:count> (x|of|of the|of them)? <word>{0,3} <piece>');
const ofAll = pattern('<all> (of)? (the|those|our|her|these)? <word>{0,1} <piece:piece>');
const allBefore = pattern(
  '(<a:all>|subtotal|sub total|sub - total|flat|comes to|come to|came to|works out at|work out at|it all|the whole lot|whole order|paying|paid|invoice) (is|of|:|=|should be|should read|should say|should have been|will be|was|comes to|price|cost|would be|now|at|for|budget|around|about|to)? (to|of|is|about)?',
);
const atBefore = ['@', 'at'];

// "price: 8.50", "cost is 12"
const labelled = pattern(
  '((price|rate|cost|unit price|unit cost|unit rate|price each|priced|charge|charging|quoted) (each|per piece)? (:|=|-|is|at|of|@){1,2}|<piece> rate|, unit|unit (price|cost|rate)|rate per unit)',
);

const endingAt = (reader: Reader, pat: ReturnType<typeof pattern>, index: number, reach: number) => {
  for (let start = Math.max(0, index - reach); start < index; start++) {
    const match = pat.at(reader.tokens, start, index);
    if (match?.end === index && reader.free(start)) return match;
  }
  return undefined;
};

/** The number at this token as a price, whether or not it is one. */
export const priceAt = (reader: Reader, index: number): Price | undefined => {
  const { tokens } = reader;
  const token = tokens[index];
  const number = token?.number;
  if (token === undefined || number === undefined || !reader.free(index) || !(number.form === 'money' || number.form === 'plain'))
    return undefined;
  // "need one each" counts.
  if (token.text === 'one' && tokens[index + 1]?.means['each'] !== undefined && !/^(at|@)$/.test(tokens[index - 1]?.text ?? ''))
    return undefined;
  // "20 bouts at 2 roses each", "at 3 spray roses": what goes in.
  const goods = tokens[index + 1];
  if (number.form === 'plain' && goods?.means['ingredient'] !== undefined && goods.means['piece'] === undefined) return undefined;
  // "for all 12 lads" counts them.
  if (number.form === 'plain' && tokens[index + 1]?.means['role'] !== undefined && tokens[index - 1]?.text === 'for all') return undefined;
  if (countsThePriced(tokens, index)) return undefined;
  let start = index;
  let end = index + 1;
  let per: Price['per'] = 'unsaid';
  let kind: Price['kind'];
  let piece: PieceKind | undefined;
  let pieceIndex: number | undefined;
  let forCount = false;
  const before = endingAt(reader, kindBefore, index, 6);
  if (before !== undefined) {
    kind = kindOf(before.kept['k']);
    start = before.start;
  }
  const dozen = dozenBehind(tokens, number, end);
  if (dozen === 'open') return undefined;
  if (dozen !== undefined) {
    const of = forKind(tokens, dozen.end);
    const kinds = of === undefined ? {} : { piece: of.kept['piece']?.means['piece'] as PieceKind, pieceIndex: of.end - 1 };
    return { index, start, end: dozen.end, number: dozen.number, per: 'each', at: false, ...kinds };
  }
  const allHead = endingAt(reader, wholeCapped, start, 7) ?? endingAt(reader, allBefore, start, 4);
  const labels = endingAt(reader, labelled, start, 4);
  const label =
    /^(labour|labor|hourly|casual|casuals|award|staff|freelance|freelancer|junior|helper|weekend|wage|exchange|tax|pay|delivery|interest|vat|gst|day|wholesale|stem|last|old)$/.test(
      tokens[(labels?.start ?? 0) - 1]?.text ?? '',
    )
      ? undefined
      : labels;
  const each = eachBehind(tokens, end);
  if (each !== undefined && ofPeople(tokens, index, each.end)) return undefined;
  const few = bundleBehind(tokens, end);
  const perPiece = listsKinds(tokens, end) ? undefined : perPieceBehind(tokens, index, end);
  const all = allBehind(tokens, end);
  const pieces = forPieces.at(tokens, end, tokens.length);
  const between = taxBetween.at(tokens, end, tokens.length);
  // "€9.50 + vat per buttonhole"
  const behindTax = between === undefined || joinsAPiece(tokens, between) ? undefined : perPieceBehind(tokens, index, between.end);
  const beyond =
    between === undefined
      ? undefined
      : behindTax !== undefined || eachBehind(tokens, between.end) !== undefined
        ? ('each' as const)
        : allBehind(tokens, between.end) !== undefined
          ? ('all' as const)
          : undefined;
  if (perPiece !== undefined && tokens[end]?.text !== 'not') {
    per = 'each';
    piece = perPiece.kept['piece']?.means['piece'] as PieceKind;
    pieceIndex = perPiece.end - 1;
    end = perPiece.end;
  } else if (few !== undefined) {
    per = 'all';
    end = few.match.end;
  } else if (each !== undefined) {
    per = 'each';
    end = each.end;
    kind = stronger(kind, kindOf(each.kept['k']));
  } else if (coversAll(tokens, end, number)) {
    per = 'all';
  } else if (all !== undefined) {
    per = 'all';
    end = all.end;
    // "£63 for all the buttonholes, £54 for all the corsages"
    const own = ofAll.at(tokens, end - 1, tokens.length);
    piece = own?.kept['piece']?.means['piece'] as PieceKind | undefined;
    pieceIndex = own && own.end - 1;
    kind = stronger(kind, kindOf(all.kept['k']));
  } else if (loneAll(tokens, end) && (number.form === 'money' || Number(number.amount) >= 100)) {
    per = 'all';
    end += 1;
  } else if (beyond !== undefined) {
    per = beyond;
    piece = behindTax?.kept['piece']?.means['piece'] as PieceKind | undefined;
    pieceIndex = behindTax === undefined ? undefined : behindTax.end - 1;
  } else if (pieces !== undefined || (between !== undefined && forPieces.at(tokens, between.end, tokens.length) !== undefined)) {
    forCount = true;
    per = 'unsaid';
  }
  if (allHead !== undefined && per === 'unsaid') {
    per = 'all';
    start = allHead.start;
    forCount = false;
    if (/^(cap|capped|limit)$/.test(tokens[start]?.text ?? '')) kind ??= 'up to';
  }
  if (label !== undefined && per === 'unsaid') {
    per = 'each';
    start = label.start;
  }
  // "$18 x 20", "20 lapels x $18"
  const timesAfter = tokens[end]?.text === 'x' && isCount(tokens[end + 1]);
  const timesBefore =
    tokens[start - 1]?.text === 'x' &&
    (number.form === 'money' || !isCount(token)) &&
    number.max === undefined &&
    (isCount(tokens[start - 2]) || isA(tokens[start - 2] ?? token, 'piece'));
  if (per === 'unsaid' && !forCount && ((number.form === 'money' && timesAfter) || timesBefore)) per = 'each';
  const previous = tokens[start - 1];
  const at = previous !== undefined && (atBefore.includes(previous.text) || isByPrice(tokens, index));
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
  // "16 max for the lapels", "16 for the lapels max"
  const ceiling = kindAfter.at(tokens, end, tokens.length);
  const named = forKind(tokens, end) ?? (ceiling && forKind(tokens, ceiling.end));
  if (named !== undefined && pieces === undefined && per !== 'all') {
    piece ??= named.kept['piece']?.means['piece'] as PieceKind;
    pieceIndex ??= named.end - 1;
  } else if (isA(tokens[end] ?? token, 'piece') && number.form === 'money' && per === 'unsaid' && end === index + 1 && !at) {
    piece = tokens[end]?.means['piece'] as PieceKind;
    pieceIndex = end;
  }
  // "£16 for the lapels max"; "max 30" behind it is of the next.
  if (named !== undefined && pieceIndex === named.end - 1 && tokens[named.end]?.means['upTo'] !== undefined)
    if (tokens[named.end + 1]?.number === undefined) kind = 'up to';
  const after = ceiling;
  if ((kind === undefined || kind === 'budget') && after !== undefined && tokens[after.end]?.number === undefined) {
    kind = kindOf(after.kept['k']);
    end = after.end;
  }
  const told = kind === undefined ? kindTold(tokens, start, end) : undefined;
  return {
    index,
    start,
    end,
    number,
    per,
    at,
    ...(told === undefined ? (kind === undefined ? {} : { kind }) : { kind: told.kind, told: told.tokens }),
    ...(piece === undefined ? {} : { piece }),
    ...(pieceIndex === undefined ? {} : { pieceIndex }),
    ...(few === undefined ? {} : { bundle: few.bundle }),
    ...(forCount ? { forCount: true } : {}),
    ...(per === 'all' && all?.kept['n']?.number !== undefined ? { ofCount: all.kept['n'].number.amount } : {}),
  };
};
