// Finds every wearable piece named in a message and how many of it: "40 lapel pieces", "4x BH", "corsages: 6", "a crown".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, isNumber, type Token } from '../text/token.ts';
import { sundryHeads } from '../words/piece-words.ts';
import { wordList } from '../words/word-list.ts';

export interface Mention {
  readonly index: number; // the piece word
  readonly last: number; // its last token ("lapel pices" is two)
  readonly start: number; // from its count on
  readonly end: number;
  readonly kind: PieceKind;
  readonly count?: Token; // its number token
  readonly exact?: number; // "a crown" 1, "both corsages" 2
  readonly countIndex?: number;
  readonly apart?: true; // its count stands elsewhere in the message
  readonly priceIndex?: number; // a number behind it that prices it
  readonly material?: string;
  readonly materialIndex?: number;
  readonly wearer?: string;
}

// Between a number and its piece only describing words may stand.
const breaks = new Set(
  wordList(`
  and, for, with, to, at, from, is, are, was, were, have, has, had, need, needs, want, wants, in, on, by, or, per, each, then, but,
  not, so, if, as, get, gets, got, left, done, made, make, makes, than, that, which, before, after, now, into, onto, pairs, came,
  come, out, no, would, will, can, could, should, be, do, did, does, we, they, you, i, it, kg, plus, minus, inc, percent, guests,
  tables, people, hours, days, minutes, price, budget, total, instead, rather, like
`),
);

const notDescribing = ['piece', 'other', 'month', 'weekday', 'each', 'all', 'budget', 'taxName', 'taxWord', 'upTo', 'from', 'pack'];
const mayDescribe = (token: Token): boolean => {
  if (token.kind === 'line' || token.number !== undefined) return false;
  if (token.kind === 'sign') return token.text === '-' || token.text === '"' || token.text === "'";
  if (breaks.has(token.text)) return false;
  if (token.means['bench'] !== undefined && !/^(pax|guests|ppl|nos)$/.test(token.text)) return false;
  return !notDescribing.some((tag) => token.means[tag] !== undefined);
};

const inBrackets = pattern('\\( (the|for)? <role> \\)?');
const forRole = pattern('for (the|our|my)? <role>');
const rightCount = pattern('(x|:|=|qty|-) <n:count>');
const numbered = pattern('(,|-)? <n:count> (no|nos|pcs|pc|off|pieces|of them|of those|nr|qty|in number) (.)?');
const bareRight = pattern('<n:count>');

const countLeft = (
  reader: Reader,
  index: number,
): Pick<Mention, 'start' | 'count' | 'exact' | 'countIndex' | 'material' | 'materialIndex'> => {
  let start = index;
  let material: string | undefined;
  let materialIndex: number | undefined;
  for (let at = index - 1, steps = 0; at >= 0 && steps < 5 && reader.free(at); at--, steps++) {
    const token = reader.tokens[at] as Token;
    const found = { ...(material === undefined || materialIndex === undefined ? {} : { material, materialIndex }) };
    if (isCount(token)) return { ...found, start: at, count: token, countIndex: at };
    if (token.text === 'both' && steps < 2) return { ...found, start: at, exact: 2, countIndex: at };
    const owner =
      token.means['owner'] !== undefined ||
      (token.means['role'] !== undefined && steps === 0 && !/s$/.test(reader.tokens[index]?.text ?? 's') && token.text !== 'rest');
    if (owner && isCount(reader.tokens[at - 1])) continue;
    if (owner) return { ...found, start: at, exact: 1, countIndex: at };
    // "$22 a bout" prices one, it orders none.
    if ((token.text === 'a' || token.text === 'an') && reader.tokens[at - 1]?.number !== undefined) return { start: index };
    if (token.text === 'a' || token.text === 'an' || token.text === 'single') return { ...found, start: at, exact: 1, countIndex: at };
    if (token.means['material'] !== undefined) {
      material = token.means['material'];
      materialIndex = at;
      start = at;
    } else if (!mayDescribe(token)) break;
  }
  return { start, ...(material === undefined || materialIndex === undefined ? {} : { material, materialIndex }) };
};

const countRight = (reader: Reader, after: number): { count: Token; countIndex: number; marked: boolean } | undefined => {
  const told = numbered.at(reader.tokens, after, reader.tokens.length);
  const number = told?.kept['n'];
  const at = number === undefined ? -1 : reader.tokens.indexOf(number, after);
  if (number !== undefined && reader.free(at)) return { count: number, countIndex: at, marked: true };
  const marked = rightCount.at(reader.tokens, after, reader.tokens.length);
  const match = marked ?? bareRight.at(reader.tokens, after, reader.tokens.length);
  if (match === undefined || !reader.free(match.end - 1)) return undefined;
  const next = reader.tokens[match.end];
  // A number with "each", a tax word or a decimal is a price; a dash may stand before a price too.
  if (
    next !== undefined &&
    ['each', 'included', 'onTop', 'piece', 'taxName'].some((tag) => next.means[tag] !== undefined && next.text !== 'plus')
  )
    return undefined;
  if (next?.means['all'] !== undefined || next?.text === 'per' || next?.text === '+' || next?.text === '/') return undefined;
  const count = match.kept['n'];
  if (count === undefined || count.number?.max !== undefined) return undefined;
  return { count, countIndex: match.end - 1, marked: marked !== undefined && reader.tokens[after]?.text !== '-' };
};

// "groom's buttonhole 18, 6 others at 12": as many more of the kind named before.
const others = pattern('<n:count> (others|ones|more|extra) (@|at|<money>|for)');

const isPiece = (reader: Reader, index: number): boolean => {
  const token = reader.tokens[index];
  if (token?.means['piece'] === undefined || !reader.free(index)) return false;
  const next = reader.tokens[index + 1];
  if (next !== undefined && next.kind === 'word' && sundryHeads.has(next.text)) return false;
  if (token.text === 'hair' && !isCount(reader.tokens[index - 1])) return false; // "hair appointment"
  if (token.means['piece'] === 'unspecified') {
    if (next?.text === 'of') return false;
    const before = reader.tokens[index - 1];
    if (before?.means['piece'] !== undefined && reader.free(index - 1)) return false;
    if (/^(unit|units|item|items|wearables?)$/.test(token.text) && !isNumber(before, 'plain')) return false;
  }
  // "per buttonhole" and "a head" price a piece; they do not order one.
  const before = reader.tokens[index - 1];
  return !(
    before?.text === 'per' ||
    before?.text === '/' ||
    (before?.means['each'] !== undefined && before.text !== 'each' && before.text !== 'ea')
  );
};

/** Numbers that stand behind their piece in a sentence of such pairs: "buttonholes 10 corsage 22". */
const ofEach = pattern('<n:count> of (each|both|them each)');
const nameFirst = (reader: Reader): ReadonlyMap<number, number> => {
  const pairs = new Map<number, number>();
  for (const part of reader.message.parts) {
    const own = new Map<number, number>();
    let index = part.start;
    while (index < part.end) {
      const token = reader.tokens[index];
      if (token === undefined || /^(,|and|&|\/|\+|-|;)$/.test(token.text)) index += 1;
      else if (
        token.means['piece'] !== undefined &&
        reader.free(index) &&
        isNumber(reader.tokens[index + 1], 'plain') &&
        reader.free(index + 1)
      ) {
        own.set(index, index + 1);
        index += 2;
      } else break;
    }
    if (own.size >= 2) for (const [piece, number] of own) pairs.set(piece, number);
  }
  return pairs;
};

/** Every piece mention in the message, in order. */
export const findMentions = (reader: Reader): Mention[] => {
  const mentions: Mention[] = [];
  let usedTo = 0;
  const pairs = nameFirst(reader);
  const each = ofEach.in(reader.tokens, 0, reader.tokens.length);
  const eachCount = each?.kept['n'];
  for (let index = 0; index < reader.tokens.length; index++) {
    const more = others.at(reader.tokens, index, reader.tokens.length);
    const before = mentions.at(-1);
    if (more?.kept['n'] !== undefined && before !== undefined && reader.free(index) && reader.free(index + 1)) {
      mentions.push({
        index: index + 1,
        last: index + 1,
        start: index,
        end: index + 2,
        kind: before.kind,
        count: more.kept['n'],
        countIndex: index,
      });
      usedTo = index + 2;
      continue;
    }
    if (!isPiece(reader, index)) continue;
    const token = reader.tokens[index] as Token;
    const after = reader.tokens[index + 1];
    const last = after?.means['piece'] === 'unspecified' && reader.free(index + 1) && after.number === undefined ? index + 1 : index;
    const left = pairs.has(index) ? { start: index } : countLeft(reader, index);
    const leftUsed = left.countIndex !== undefined && left.countIndex < usedTo;
    const right = left.countIndex === undefined || leftUsed ? countRight(reader, last + 1) : undefined;
    const base = leftUsed ? { start: index } : left;
    const bracket =
      inBrackets.at(reader.tokens, last + 1, reader.tokens.length) ?? forRole.at(reader.tokens, last + 1, reader.tokens.length);
    const end = bracket?.end ?? (right?.marked === true ? right.countIndex + 1 : last + 1);
    mentions.push({
      ...base,
      ...(right?.marked === true ? { count: right.count, countIndex: right.countIndex } : {}),
      index,
      last,
      end,
      kind: token.means['piece'] as PieceKind,
      ...(bracket === undefined
        ? {}
        : { wearer: reader.words(bracket.end - (reader.tokens[bracket.end - 1]?.text === ')' ? 2 : 1), bracket.end).replace(/\)$/, '') }),
    });
    const pair = pairs.get(index);
    if (pair !== undefined) {
      // A kind already counted is priced by its second number.
      const mine = mentions.at(-1);
      const counted = mentions.some((mention) => mention.kind === token.means['piece'] && mention.countIndex !== undefined);
      if (mine !== undefined)
        mentions[mentions.length - 1] =
          eachCount !== undefined
            ? { ...mine, priceIndex: pair, count: eachCount, countIndex: each?.start ?? pair, apart: true }
            : counted
              ? { ...mine, priceIndex: pair }
              : { ...mine, count: reader.tokens[pair] as Token, countIndex: pair, end: pair + 1 };
      usedTo = pair + 1;
      index = last;
      continue;
    }
    usedTo = Math.max(last + 1, right?.marked === true ? right.countIndex + 1 : 0);
    index = last;
  }
  return withBareCounts(reader, mentions);
};

// "BH 12, corsage 4, crown 1": a list with its numbers after the names, when no number stands before any name.
const withBareCounts = (reader: Reader, mentions: readonly Mention[]): Mention[] => {
  if (mentions.length < 2 || mentions.some((mention) => mention.countIndex !== undefined)) return [...mentions];
  const counts = mentions.map((mention) => countRight(reader, mention.last + 1));
  if (counts.some((count) => count === undefined)) return [...mentions];
  return mentions.map((mention, at) => {
    const right = counts[at];
    return right === undefined ? mention : { ...mention, count: right.count, countIndex: right.countIndex, end: right.countIndex + 1 };
  });
};
