// Counts that cannot stand alone: two offers with "or" between them, and "up to 33 BH", which may be an order or work so far.

import type { PieceKind } from '../../handbook/pieces.ts';
import { decimal } from '../../values/decimal.ts';
import type { Fact } from '../fact.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import { ofKind } from '../text/kind-named.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { sharesShort } from './shares-by-material.ts';

const link = '(at|@|for|=|-|:)?';
const offers = [
  // "30 bouts at 12 or 40 at 11": the middle two stand together as one number.
  pattern(`<n:count> (<material>)? <p:piece> ${link} <r:range> (<q:piece>)? ${link} <b:amount>`),
  pattern(
    `<n:count> (<material>)? <p:piece> ${link} (<a:amount>)? (<e:each>)? (,)? (or|otherwise) <m:count> (<material>)? (<q:piece>)? ${link} (<b:amount>)?`,
  ),
];

const kindOf = (token: Token | undefined): PieceKind | undefined => token?.means['piece'] as PieceKind | undefined;
const each = (number: NumberRead, amount: string): 'each' | 'all' => (number.form === 'money' && Number(amount) >= 100 ? 'all' : 'each');

const offer = (
  piece: PieceKind,
  count: string,
  price: NumberRead | undefined,
  amount: string | undefined,
  words: string,
  per?: 'each' | 'all',
): Choice => {
  const facts: Fact[] = [{ fact: 'pieces', piece, count: Number(count), words }];
  if (price !== undefined && amount !== undefined)
    facts.push({
      fact: 'price',
      amount,
      per: per ?? each(price, amount),
      ...(price.currency === undefined ? {} : { currency: price.currency }),
      ...(price.symbol === undefined ? {} : { symbol: price.symbol }),
      words,
    });
  const [, priced] = facts;
  const told = priced === undefined ? '' : ` at ${amount}${priced.fact === 'price' && priced.per === 'all' ? ' for all' : ' each'}`;
  return { words: `${count} ${piece}${count === '1' ? '' : 's'}${told}`, facts };
};

/** "30 bouts $12 or 40 for $11", "20 bouts or 22 corsages": which of the two is not said. */
const twoOffers = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  for (const form of offers) {
    const match = form.in(tokens, 0, tokens.length);
    if (match === undefined || !reader.free(match.start)) continue;
    const { n, p, r, q, m, a, b } = match.kept;
    const [first, second] = [kindOf(p), kindOf(q) ?? kindOf(p)];
    const [low, high] = r === undefined ? [a?.number?.amount, m?.number?.amount] : (r.number?.or ?? []);
    if (n?.number === undefined || first === undefined || second === undefined || high === undefined) continue;
    if (r === undefined && b === undefined && first === second) continue;
    if (!/^\d{1,4}$/.test(high)) continue;
    const words = reader.words(match.start, match.end);
    const choices = [
      offer(first, n.number.amount, (r ?? a)?.number, low, words),
      offer(second, high, b?.number ?? a?.number, b?.number?.amount ?? low, words),
    ];
    return { start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
  }
  return undefined;
};

const upTo = pattern('(ok|so)? (<u:upTo>) <n:count> (<material>)? <p:piece>');

/** "up to 33 BH" and nothing else. */
const orderOrWork = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = upTo.at(tokens, 0, tokens.length);
  const [piece, count] = [kindOf(match?.kept['p']), Number(match?.kept['n']?.number?.amount)];
  if (match === undefined || piece === undefined || match.end < tokens.length || !reader.free(match.start)) return undefined;
  if (!/^up ?to$/.test(match.kept['u']?.text ?? '')) return undefined;
  const words = reader.words(match.start, match.end);
  const choices: Choice[] = [
    { words: `an order of up to ${count}`, facts: [{ fact: 'pieces', piece, count, approx: true, words }] },
    { words: `${count} made so far`, facts: [{ fact: 'made', count, total: true, ...ofKind(piece), words }] },
  ];
  return { start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

const sum = '(at|@)? <a:amount> (<e:each>|<l:all>)?';
const reduced = [
  pattern(`<n:count> (<material>)? <p:piece> ${sum} (,|-)? (less|minus|with|and)? (a)? <d:percent> (off|discount|disc|less|reduction)`),
  pattern(`<n:count> (<material>)? <p:piece> ${sum} (,)? (less|minus) (a)? <d:percent>`),
  pattern(`<d:percent> (off|discount on) (the|for)? <n:count> (<material>)? <p:piece> ${sum}`),
];

// "20 bouts 320 with 10% off": for all of them where no one of them costs so much, and either where one could. Common practice, no source.
const dearest: Readonly<Record<string, number>> = { ZAR: 1000, INR: 4000 };
const sums = ({ context }: Reader, { amount, currency }: NumberRead, count: number): readonly ('each' | 'all')[] => {
  const scale = dearest[currency ?? context.currency] ?? 150;
  const [sum, share] = [Number(amount), Number(amount) / count];
  if (count === 1 || share < scale / 50) return ['each'];
  return sum > scale ? ['all'] : ['each', 'all'];
};

/** "40 bouts at 20 less 10%": the price before, or the price after. */
const withDiscount = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = firstIn(reduced, tokens, 0, tokens.length);
  const { n, p, a, d, e, l } = match?.kept ?? {};
  const piece = kindOf(p);
  if (match === undefined || piece === undefined || n?.number === undefined || a?.number === undefined || d?.number === undefined)
    return undefined;
  if (a.number.max !== undefined || d.number.max !== undefined || !reader.free(match.start)) return undefined;
  // Behind several kinds it may be off all of them.
  if (tokens.filter((token) => kindOf(token) !== undefined).length > 1) return undefined;
  const words = reader.words(match.start, match.end);
  const after = decimal(a.number.amount).times(decimal(100).minus(d.number.amount)).div(100).toFixed();
  const at = /^(at|@)$/.test(tokens[tokens.indexOf(a, match.start) - 1]?.text ?? '');
  const pers =
    l !== undefined ? (['all'] as const) : e !== undefined || at ? (['each'] as const) : sums(reader, a.number, Number(n.number.amount));
  const choices = pers.flatMap((per) =>
    [a.number?.amount ?? '', after].map((amount) => offer(piece, n.number?.amount ?? '', a.number, amount, words, per)),
  );
  return { start: match.start, end: match.end, asks: [{ about: 'price', why: 'which number', words, choices }] };
};

export const doubtfulCount = (reader: Reader): Finding | undefined =>
  twoOffers(reader) ?? sharesShort(reader) ?? withDiscount(reader) ?? orderOrWork(reader);
