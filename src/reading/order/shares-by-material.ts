// An order shared out between two materials: "40 lapels: 20 dried at 14, 20 fresh at 11", "20 bouts, 12 dried 8 fresh".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import type { Mention } from './mention.ts';

const shares =
  '(,|:|-|=|\\(|of which|as)? <a:count> (are|to be|in)? <m:material> ((at|@)? <money>|(at|@) <plain>)? (<each>)? (,|and|&|+|n|/|plus)? <b:count> (are|to be|in)? <n:material>';
const after = pattern(shares);
const counted = pattern(`<w:count> <p:piece> ${shares}`);

type Material = NonNullable<FactOf<'material'>['material']>;
interface Share {
  readonly count: Token;
  readonly word: Token;
  readonly material: Material;
}

const amount = (token: Token): number => Number(token.number?.amount);

const sharesOf = (reader: Reader, match: Match): readonly [Share, Share] | undefined => {
  const { a, m, b, n } = match.kept;
  const next = reader.tokens[match.end];
  if (a === undefined || m === undefined || b === undefined || n === undefined) return undefined;
  if (m.means['material'] === n.means['material'] || a.number?.max !== undefined || b.number?.max !== undefined) return undefined;
  if (next?.means['piece'] !== undefined || next?.means['ingredient'] !== undefined) return undefined;
  for (let index = match.start; index < match.end; index++) if (!reader.free(index)) return undefined;
  const share = (count: Token, word: Token): Share => ({ count, word, material: word.means['material'] as Material });
  return [share(a, m), share(b, n)];
};

/** The two lines in place of the one, and where they end, when they add up to it. */
export const sharesByMaterial = (reader: Reader, whole: Mention): { lines: readonly [Mention, Mention]; end: number } | undefined => {
  const { tokens } = reader;
  const match = after.at(tokens, whole.end, tokens.length);
  const both = match === undefined ? undefined : sharesOf(reader, match);
  if (match === undefined || both === undefined || whole.count === undefined) return undefined;
  if (amount(both[0].count) + amount(both[1].count) !== amount(whole.count)) return undefined;
  const line = ({ count, word, material }: Share): Mention => {
    const [at, last] = [tokens.indexOf(count, whole.end), tokens.indexOf(word, whole.end)];
    return { index: at, last, start: at, end: last + 1, kind: whole.kind, count, countIndex: at, material };
  };
  return { lines: [{ ...line(both[0]), start: whole.start }, line(both[1])], end: match.end };
};

/** "20 bouts, 12 dried 6 fresh": twenty, or eighteen. */
export const sharesShort = (reader: Reader): Finding | undefined => {
  const match = counted.in(reader.tokens, 0, reader.tokens.length);
  const both = match === undefined ? undefined : sharesOf(reader, match);
  const [whole, piece] = [match?.kept['w'], match?.kept['p']?.means['piece'] as PieceKind | undefined];
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
