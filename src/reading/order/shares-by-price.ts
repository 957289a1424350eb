// An order shared out by what each costs: "11 buttonholes, groom's one at €14, other ten at €9 each", "8 bouts: groom's 18, rest 12".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { currencyFields } from './read-order.ts';

const price = (name: string): string => `(is|are|at|@|=|:|-|for|to be){0,2} <${name}:amount> (<each>)?`;
const own = (name: string): string => `(the|a|an)? (<${name}:owner>|<${name}:role>) (one|own|version)? ${price(`${name}p`)}`;
const rest = (name: string): string =>
  `(the|all the|all)? (other|others|rest|remaining|remainder|other ones|rest of them)? (<${name}:count>)? (others|ones|rest)? ${price(`${name}p`)}`;
const link = '(,|;|and|&|\\+|then|with|but|\\.){0,2}';
const whole = '<w:count> (<material>)? <k:piece> (,|:|-|\\(|of which|with|-|\\.){0,2}';
const forms = [pattern(`${whole} ${own('a')} ${link} ${rest('b')} (\\))?`), pattern(`${whole} ${rest('b')} ${link} ${own('a')} (\\))?`)];
const saysRest = /^(other|others|rest|remaining|remainder|other ones|rest of them)$/;

/** "20 lapels, 12 big at 14 and 8 small at 10": a count without a price that the priced lines behind it make up is their sum, no order of its own. */
export const withoutSum = (mentions: readonly Mention[], prices: readonly Price[]): Mention[] =>
  mentions.filter((mention, at) => {
    const rest = mentions.slice(at + 1);
    const others = rest.slice(
      0,
      rest.findIndex((other) => other.kind !== mention.kind) < 0 ? rest.length : rest.findIndex((other) => other.kind !== mention.kind),
    );
    const [next] = others;
    if (mention.countIndex === undefined || next === undefined || others.length < 2) return true;
    if (prices.some((price) => price.start >= mention.end && price.start < next.start)) return true;
    const sum = others.reduce((all, other) => all + (other.count === undefined ? (other.exact ?? 0) : amount(other.count)), 0);
    return sum !== amount(mention.count);
  });

const amount = (token: Token | undefined): number => Number(token?.number?.amount);

/** Both lines in place of the whole, when the shares make it up. */
export const sharesByPrice = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  for (const form of forms) {
    const match = form.in(tokens, 0, tokens.length);
    const { w, k, a, ap, b, bp } = match?.kept ?? {};
    if (match === undefined || w === undefined || ap?.number === undefined || bp?.number === undefined) continue;
    const stretch = tokens.slice(match.start, match.end);
    const wearer = a?.means['owner'] ?? a?.means['role'];
    if (wearer === undefined || saysRest.test(a?.text ?? '') || w.number?.max !== undefined) continue;
    const left = amount(w) - 1;
    // Without a word for the rest its number must say so.
    if (b === undefined ? !stretch.some((token) => saysRest.test(token.text)) : amount(b) !== left) continue;
    if (left < 1 || stretch.some((_, at) => !reader.free(match.start + at))) continue;
    const piece = k?.means['piece'] as PieceKind;
    const line = (count: number, cost: Token, more: object): Unworded => ({
      fact: 'pieces',
      piece,
      count,
      price: { amount: cost.number?.amount ?? '0', per: 'each', ...currencyFields(cost.number as NonNullable<Token['number']>) },
      ...more,
    });
    return found(reader, match.start, match.end, [line(1, ap, { wearer }), line(left, bp, {})]);
  }
  return undefined;
};
