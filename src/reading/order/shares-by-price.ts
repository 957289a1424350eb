// An order shared out by what each costs: "11 buttonholes, groom's one at €14, other ten at €9 each", "8 bouts: groom's 18, rest 12".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstIn, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isRangeOrChoice, isSingle, type Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { currencyFields } from './read-order.ts';

const price = (name: string): string => `(is|are|at|@|=|:|-|for|to be){0,2} <${name}:amount> (<each>)?`;
const own = (name: string): string => `(the|a|an)? (<${name}:owner>|<${name}:role>) (one|own|version)? ${price(`${name}p`)}`;
const rest = (name: string): string =>
  `(the|all the|all)? (other|others|rest|remaining|remainder|other ones|rest of them)? (<${name}:count>)? (others|ones|rest)? ${price(`${name}p`)}`;
const link = '(,|;|and|&|\\+|then|with|but|\\.){0,2}';
const whole =
  '<w:count> (<material>)? <k:piece> ((,|but|and|with){1,2} <count> of (them|these|those) (are|is|being|to be|want|wants) (<word>){1,2})? (,|:|-|\\(|of which|with|so|\\.){0,2}';
const forms = [pattern(`${whole} ${own('a')} ${link} ${rest('b')} (\\))?`), pattern(`${whole} ${rest('b')} ${link} ${own('a')} (\\))?`)];
// "7 halos, all 60 except the bride's at 95"
const allBut = pattern(
  `${whole} (all|all of them|all at|the lot)? (at|@|are)? <bp:amount> (<each>)? (,|-)? (except|bar|apart from|other than|excluding|excl|but not|not) (the|for|for the)? (<a:owner>|<a:role>) (one|own|version|'s)? (,|-|\\()? (that|which|that's|thats|his|hers)? ${price('ap')}`,
);
forms.push(allBut);
// "20 bouts: 12 at 14 and 8 at 18", "25 buttonholes, ten of them £12 and the other fifteen £8.50", "30 bouts, 12 are $14 and the rest $11"
const at = (name: string): string =>
  `((are|is|to be|=|:)? (at|@|for) <${name}p:amount>|(are|is|=|:|cost|to be)? <${name}p:money>|(are|is)? <${name}p:plain> <each>) (<each>)?`;
const share = (name: string): string =>
  `(the|with|with the|another|and)? (other|others|remaining)? <${name}:count> (x|of them|of these|of those|of em|of which|others|ones)? ${at(name)}`;
const restAt = `(the|all the|with the)? (<r:role>|others|other ones|remaining|remaining ones|remainder) (of them)? ${at('b')}`;
const counted = [
  pattern(`${whole} ${share('a')} ${link} (${share('c')} ${link})? ${restAt} (\\))?`),
  pattern(`${whole} ${share('a')} ${link} ${share('b')} (${link} ${share('c')})? (\\))?`),
];
const saysRest = /^(other|others|rest|remaining|remainder|other ones|rest of them)$/;

/** "20 lapels, 12 big at 14 and 8 small at 10": a count without a price that the priced lines behind it make up is their sum, no order of its own. */
export const withoutSum = (mentions: readonly Mention[], prices: readonly Price[]): Mention[] => {
  const kept: Mention[] = [];
  let behind = { lines: 0, sum: 0 }; // the lines of the same kind that follow one another behind the mention at hand
  for (let at = mentions.length - 1; at >= 0; at--) {
    const [mention, next] = [mentions[at] as Mention, mentions[at + 1]];
    if (next?.kind !== mention.kind) behind = { lines: 0, sum: 0 };
    const sums = mention.countIndex !== undefined && behind.lines >= 2 && behind.sum === amount(mention.count);
    const priced = sums && prices.some((price) => price.start >= mention.end && price.start < (next?.start ?? 0));
    if (!sums || priced) kept.push(mention);
    behind = { lines: behind.lines + 1, sum: behind.sum + (mention.count === undefined ? (mention.exact ?? 0) : amount(mention.count)) };
  }
  return kept.reverse();
};

const amount = (token: Token | undefined): number => Number(token?.number?.amount);

const ofOne = (piece: PieceKind, count: number, cost: Token, more: object = {}, money: Token = cost): Unworded => ({
  fact: 'pieces',
  piece,
  count,
  price: {
    amount: cost.number?.amount ?? '0',
    per: 'each',
    ...currencyFields((cost.number?.form === 'money' ? cost : money).number as NonNullable<Token['number']>),
  },
  ...more,
});

const countedShares = (reader: Reader): Finding | undefined => {
  const match = firstIn(counted, reader.tokens, 0, reader.tokens.length);
  if (match === undefined) return undefined;
  const { w, k, a, ap, b, bp, c, cp, r } = match.kept;
  if (r !== undefined && r.means['role'] !== 'rest') return undefined;
  const shares = [[a, ap] as const, [b, bp] as const, [c, cp] as const].flatMap(([count, cost]) =>
    count === undefined || cost === undefined ? [] : [{ count: amount(count), cost }],
  );
  const rest = amount(w) - amount(a) - (c === undefined ? 0 : amount(c)); // where the last share is all that is left
  if (b === undefined && bp !== undefined && rest > 0) shares.push({ count: rest, cost: bp });
  const sum = shares.reduce((all, { count }) => all + count, 0);
  if (reader.tokens.slice(match.start, match.end).some((_, at) => !reader.free(match.start + at))) return undefined;
  // "20 bouts, 15 or 16 at 12 and the rest at 14"
  if ([w, a, b, c, ap, bp, cp].some((token) => isRangeOrChoice(token?.number))) return { start: match.start, end: match.end, held: true };
  // Shares that do not make the whole up say nothing sure of either.
  if (sum !== amount(w)) return { start: match.start, end: match.end, held: true };
  const piece = k?.means['piece'] as PieceKind;
  // "five at twelve quid and the rest at nine": pounds too.
  const money = shares.find(({ cost }) => cost.number?.form === 'money')?.cost;
  return found(
    reader,
    match.start,
    match.end,
    shares.map(({ count, cost }) => ofOne(piece, count, cost, {}, money)),
  );
};

/** The lines in place of the whole, when the shares make it up. */
export const sharesByPrice = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const shared = countedShares(reader);
  if (shared !== undefined) return shared;
  for (const form of forms) {
    const match = form.in(tokens, 0, tokens.length);
    const { w, k, a, ap, b, bp } = match?.kept ?? {};
    if (match === undefined || w === undefined || ap?.number === undefined || bp?.number === undefined) continue;
    const stretch = tokens.slice(match.start, match.end);
    const wearer = a?.means['owner'] ?? a?.means['role'];
    if (wearer === undefined || saysRest.test(a?.text ?? '') || w.number?.max !== undefined) continue;
    const left = amount(w) - 1;
    // Without a word for the rest its number must say so.
    if (b === undefined ? form !== allBut && !stretch.some((token) => saysRest.test(token.text)) : amount(b) !== left) continue;
    if (left < 1 || stretch.some((_, at) => !reader.free(match.start + at))) continue;
    if (![w, ap, bp, b ?? w].every((token) => isSingle(token.number))) return { start: match.start, end: match.end, held: true };
    const piece = k?.means['piece'] as PieceKind;
    return found(reader, match.start, match.end, [ofOne(piece, 1, ap, { wearer }), ofOne(piece, left, bp)]);
  }
  return undefined;
};
