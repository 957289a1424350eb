// An order shared out between two materials: "40 lapels: 20 dried at 14, 20 fresh at 11", "20 bouts, 12 dried 8 fresh".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, type Reader } from '../phrase.ts';
import { changed, isSingle, type Token } from '../text/token.ts';
import type { Mention } from './mention.ts';

const shares =
  '(,|:|-|=|;|\\(|of which|as){0,2} <a:count> (of them|of these|of those|of em|of which)? (are|to be|in)? <m:material> ((at|@)? <money>|(at|@) <plain>)? (<each>)? (,|and|&|+|n|/|plus|with|but){0,2} (the|all the)? (other|remaining)? (<b:count>|<r:role>|others|other ones|remainder) (of them)? (are|to be|in|all)? <n:material>';
// "40 bouts for the gala, 24 of them fresh …", "30 corsages at 28, 10 dried …": what stands between.
const taxed = '((plus|\\+)? (<included>|<onTop>|<tax>)){0,2}';
const between = pattern(
  `((at|@)? <money> (<each>)? ${taxed}|(at|@) <plain> (<each>)? ${taxed}|<plain> <each> ${taxed}|(for|on) (the|a|her|our|their)? <word>{1,3})`,
);
const after = pattern(shares);
const counted = pattern(`<w:count> <p:piece> ${shares}`);

type Material = NonNullable<FactOf<'material'>['material']>;
interface Share {
  readonly count: Token;
  readonly word: Token;
  readonly material: Material;
}

const amount = (token: Token): number => Number(token.number?.amount);

// "24 of them fresh the rest dried": all that is left of the whole.
const restOf = ({ kept }: Match, whole: Token): Token | undefined => {
  const left = amount(whole) - Number(kept['a']?.number?.amount);
  const { r, n } = kept;
  if (!(left > 0) || n === undefined || whole.number?.max !== undefined || (r !== undefined && r.means['role'] !== 'rest'))
    return undefined;
  return changed(n, { number: { form: 'plain', amount: String(left) } });
};

const sharesOf = (reader: Reader, match: Match, whole: Token): readonly [Share, Share] | undefined => {
  const { a, m, n } = match.kept;
  const next = reader.tokens[match.end];
  const b = match.kept['b'] ?? restOf(match, whole);
  if (a === undefined || m === undefined || b === undefined || n === undefined) return undefined;
  if (m.means['material'] === n.means['material'] || a.number?.max !== undefined || b.number?.max !== undefined) return undefined;
  if (next?.means['piece'] !== undefined || next?.means['ingredient'] !== undefined) return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  const share = (count: Token, word: Token): Share => ({ count, word, material: word.means['material'] as Material });
  return [share(a, m), share(b, n)];
};

// "12 bouts at 14, of which 2 dried", "12 bouts, 2 of them dried": what the others are is not said.
const ofThem = '(of them|of these|of those|of em|of which)';
const oneShare = pattern(
  `(,|:|-|;|\\(|and|with){0,2} (of which <a:count>|<a:count> ${ofThem}) (are|is|to be|in|will be|should be|need to be|being){0,2} <m:material>`,
);
const oneOf = (reader: Reader, whole: Mention, from: number): { lines: readonly [Mention, Mention]; end: number } | undefined => {
  const match = oneShare.at(reader.tokens, from, reader.tokens.length);
  const { a, m } = match?.kept ?? {};
  const next = match === undefined ? undefined : reader.tokens[match.end];
  if (match === undefined || a === undefined || m === undefined || whole.count === undefined) return undefined;
  const left = amount(whole.count) - amount(a);
  if (!(left > 0 && amount(a) > 0) || !isSingle(whole.count.number) || !isSingle(a.number)) return undefined;
  if (next?.means['piece'] !== undefined || next?.means['ingredient'] !== undefined || next?.text === 'or') return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  // "12 bouts 4 corsages, 2 of them dried": of which kind is not said.
  if (reader.tokens.some(({ means }, at) => means['piece'] !== undefined && (at < whole.start || at >= match.end))) return undefined;
  const at = reader.tokens.indexOf(a, match.start);
  const mark = match.start;
  const count = changed(whole.count, { number: { form: 'plain', amount: String(left) } });
  const place = whole.countIndex ?? whole.start;
  return {
    lines: [
      { index: mark, last: mark, start: whole.start, end: whole.end, kind: whole.kind, count, countIndex: place },
      {
        index: match.end - 1,
        last: match.end - 1,
        start: mark,
        end: match.end,
        kind: whole.kind,
        count: a,
        countIndex: at,
        material: m.means['material'] as Material,
      },
    ],
    end: match.end,
  };
};

/** The two lines in place of the one, and where they end, when they add up to it. */
export const sharesByMaterial = (reader: Reader, whole: Mention): { lines: readonly [Mention, Mention]; end: number } | undefined => {
  const { tokens } = reader;
  if (whole.count === undefined) return undefined;
  const past = between.at(tokens, whole.end, tokens.length)?.end;
  const match = after.at(tokens, whole.end, tokens.length) ?? (past === undefined ? undefined : after.at(tokens, past, tokens.length));
  const both = match === undefined ? undefined : sharesOf(reader, match, whole.count);
  if (match === undefined) return oneOf(reader, whole, whole.end) ?? (past === undefined ? undefined : oneOf(reader, whole, past));
  if (both === undefined) return undefined;
  if (amount(both[0].count) + amount(both[1].count) !== amount(whole.count)) return undefined;
  const line = ({ count, word, material }: Share): Mention => {
    const last = tokens.indexOf(word, whole.end);
    const at = tokens.includes(count) ? tokens.indexOf(count, whole.end) : last;
    return { index: at, last, start: at, end: last + 1, kind: whole.kind, count, countIndex: at, material };
  };
  return { lines: [{ ...line(both[0]), start: whole.start }, line(both[1])], end: match.end };
};

/** "20 bouts, 12 dried 6 fresh": twenty, or eighteen. */
export const sharesShort = (reader: Reader): Finding | undefined => {
  const match = counted.in(reader.tokens, 0, reader.tokens.length);
  const [whole, piece] = [match?.kept['w'], match?.kept['p']?.means['piece'] as PieceKind | undefined];
  const both = match === undefined || whole === undefined ? undefined : sharesOf(reader, match, whole);
  if (match === undefined || both === undefined || whole === undefined || piece === undefined) return undefined;
  const [first, second] = both;
  if (amount(first.count) + amount(second.count) === amount(whole)) return undefined;
  const words = reader.words(match.start, match.end);
  const line = ({ count, material }: Share): FactOf<'pieces'> => ({ fact: 'pieces', piece, count: amount(count), material, words });
  const all = amount(whole);
  const choices = [
    { words: `${all} in all`, facts: [{ fact: 'pieces', piece, count: all, words } as const] },
    { words: `${amount(first.count)} ${first.material} and ${amount(second.count)} ${second.material}`, facts: both.map(line) },
  ];
  return { start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};
