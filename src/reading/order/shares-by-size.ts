// A number of pieces shared out by a word, and a price for each word behind: "ten crowns, five kids five adult. kids 38 adults 55",
// "16 bouts, 2 large 14 small, large 18 small 12", "15 corsages, 9 wrist 6 pin, wrist 32 pin 26".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstIn, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { allButMaterial } from './all-but-material.ts';
import { priceEach } from './price-each.ts';
import { describes } from './told-by-size.ts';

const ones = '(ones|one|size|sized|crowns|bouts|on)?';
const link = '(,|;|and|&|+|n|/|plus|-)?';
const whole = `<w:count> (<material>)? <k:piece> (,|:|-|\\(|;|.|=|of which)? <a:count> (x)? <d:word> ${ones} ${link} <b:count> (x)? <e:word> ${ones} (\\))? (,|:|-|;|.|at|@){0,2}`;
const is = '(ones|one|on|size|sized|at|@|is|are|:|=|-){0,2}';
const forms = [
  pattern(`${whole} (the)? <f:word> ${is} <p:amount> (<each>)? ${link} (the)? <g:word> ${is} <q:amount>`),
  pattern(`${whole} <p:amount> (<each>)? (for)? (the)? <f:word> ${ones} ${link} <q:amount> (<each>)? (for)? (the)? <g:word>`),
];
const pieceOf: Readonly<Record<string, PieceKind>> = { wrist: 'wrist corsage', pin: 'pin corsage', pinned: 'pin corsage' };
const stem = (token: Token | undefined): string => (token?.text ?? '').replace(/s$/, '');
const amount = (token: Token | undefined): number => Number(token?.number?.amount);

// A word that says which of them are meant: of their kind, or how big they are.
const tells = (token: Token, kind: string): boolean => {
  const own = token.means['piece'] ?? pieceOf[stem(token)];
  return own === undefined ? describes(token, false) && token.means['material'] === undefined : own !== kind && own.includes(kind);
};

/** A line for each word at its own price; held where the shares do not make the whole up. */
export const sharesBySize = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = firstIn(forms, tokens, 0, tokens.length);
  const { w, k, a, b, d, e, f, g, p, q } = match?.kept ?? {};
  const [one, other] = [p?.number, q?.number];
  if (match === undefined || d === undefined || e === undefined || one === undefined || other === undefined) return undefined;
  const kind = k?.means['piece'] as PieceKind;
  if (!tells(d, kind) || !tells(e, kind) || stem(d) === stem(e) || !allFree(reader, match.start, match.end)) return undefined;
  const straight = stem(f) === stem(d) && stem(g) === stem(e);
  if (!straight && !(stem(f) === stem(e) && stem(g) === stem(d))) return undefined;
  const end = match.end + (tokens[match.end]?.means['each'] === undefined ? 0 : 1);
  const plain = [w, a, b, p, q].every((token) => token?.number?.max === undefined && token?.number?.or === undefined);
  if (!plain || amount(a) + amount(b) !== amount(w)) return { start: match.start, end, held: true };
  // "kids 38 adults 55": the second is of the first one's money, where it has no sign of its own.
  const line = (word: Token, count: Token | undefined, price: NumberRead): Unworded => ({
    fact: 'pieces',
    piece: (word.means['piece'] as PieceKind | undefined) ?? pieceOf[stem(word)] ?? kind,
    count: amount(count),
    price: { ...priceEach(price.form === 'money' ? price : one), amount: price.amount },
  });
  const takes = allButMaterial(tokens, match.start, end);
  return found(reader, match.start, end, [line(d, a, straight ? one : other), line(e, b, straight ? other : one)], takes);
};
