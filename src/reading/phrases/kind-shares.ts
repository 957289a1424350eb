// A sum said with its shares: "10 corsages (4 wrist, 6 pin) at 32" is four and six, not ten and four.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const shares = pattern(
  '<s:count> <w:piece> ((at|@) <c:amount> (<each>)?|<c:money> (<each>)?)? (\\(|,|:|-|=|as|of which)? <a:count> (x)? (<p:piece>|pin|pins|wrist|wrists) ((at|@) <d:amount> (<each>)?)? (,|and|&|\\+|/|n)? <b:count> (x)? (<q:piece>|pin|pins|wrist|wrists) ((at|@) <e:amount> (<each>)?)? (\\))?',
);
const priceBehind = pattern('(,|-)? ((at|@) <c:amount> (<each>)?|<c:amount> <each>)');
const short: Readonly<Record<string, PieceKind>> = {
  pin: 'pin corsage',
  pins: 'pin corsage',
  wrist: 'wrist corsage',
  wrists: 'wrist corsage',
};
const kindOf = (token: Token | undefined): PieceKind | undefined =>
  (token?.means['piece'] as PieceKind | undefined) ?? short[token?.text ?? ''];
const amount = (token: Token | undefined): number => Number(token?.number?.amount);

// Where each share has a price of its own.
const own = (token: Token | undefined): Pick<FactOf<'pieces'>, 'price'> =>
  token?.number === undefined ? {} : { price: { amount: token.number.amount, per: 'each', ...currencyFields(token.number) } };

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const match = shares.in(tokens, 0, tokens.length);
  if (match === undefined) return [];
  const { s, w, a, b } = match.kept;
  const after = (count: Token | undefined): Token | undefined => {
    const at = count === undefined ? -1 : tokens.indexOf(count, match.start);
    return tokens[at + 1]?.text === 'x' ? tokens[at + 2] : tokens[at + 1];
  };
  const [first, second, whole] = [kindOf(after(a)), kindOf(after(b)), kindOf(w)];
  if (first === undefined || second === undefined || whole === undefined || first === second) return [];
  if (amount(a) + amount(b) !== amount(s) || !(whole === 'unspecified' || (first.includes(whole) && second.includes(whole)))) return [];
  for (let index = match.start; index < match.end; index++) if (!reader.free(index)) return [];
  // A price behind the last share alone is for both.
  const common = match.kept['c'] ?? (match.kept['d'] === undefined ? match.kept['e'] : undefined);
  const behind = common === undefined && match.kept['e'] === undefined ? priceBehind.at(tokens, match.end, tokens.length) : undefined;
  const price = (common ?? behind?.kept['c'])?.number;
  const facts: Unworded[] = [
    { fact: 'pieces', piece: first, count: amount(a), ...own(match.kept['d']) },
    { fact: 'pieces', piece: second, count: amount(b), ...(match.kept['d'] === undefined ? {} : own(match.kept['e'])) },
  ];
  if (price !== undefined && price.max === undefined)
    facts.push({ fact: 'price', amount: price.amount, per: 'each', ...currencyFields(price) });
  return [found(reader, match.start, behind !== undefined && price?.max === undefined ? behind.end : match.end, facts)];
};

export const kindShares: Phrase = { name: 'kind shares', examples: [], find };
