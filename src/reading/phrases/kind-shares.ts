// A sum said with its shares: "10 corsages (4 wrist, 6 pin) at 32" is four and six, not ten and four.

import type { PieceKind } from '../../handbook/pieces.ts';
import { countsAtFirst } from '../order/at-first.ts';
import { firstThen } from '../order/first-then.ts';
import { forCouples } from '../order/for-couples.ts';
import { kindBehind } from '../order/kind-behind.ts';
import { piecesOfSets } from '../order/piece-sets.ts';
import { pricedEach, priceEach } from '../order/price-each.ts';
import { restOfKind } from '../order/rest-of-kind.ts';
import { sharesByPrice } from '../order/shares-by-price.ts';
import { sharesBySize } from '../order/shares-by-size.ts';
import { sharesByWearer } from '../order/shares-by-wearer.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const shares = pattern(
  '<s:count> <w:piece> ((at|@) <c:amount> (<each>)?|<c:money> (<each>)?)? (\\(|,|:|-|=|as|of which)? <a:count> (x|on the|are|for the|to be|of them|of them are)? (<p:piece>|pin|pins|pinned|wrist|wrists) ((at|@)? <d:amount> (<each>)?)? (,|and|&|\\+|/|n)? <b:count> (x|on the|are|for the|to be|of them|of them are)? (<q:piece>|pin|pins|pinned|wrist|wrists) ((at|@)? <e:amount> (<each>)?)? (\\))?',
);
const priceBehind = pattern('(,|-)? ((at|@) <c:amount> (<each>)?|<c:amount> <each>)');
const short: Readonly<Record<string, PieceKind>> = {
  pin: 'pin corsage',
  pins: 'pin corsage',
  pinned: 'pin corsage',
  wrist: 'wrist corsage',
  wrists: 'wrist corsage',
};
const kindOf = (token: Token | undefined): PieceKind | undefined =>
  (token?.means['piece'] as PieceKind | undefined) ?? (Object.hasOwn(short, token?.text ?? '') ? short[token?.text ?? ''] : undefined);
const amount = (token: Token | undefined): number => Number(token?.number?.amount);

// "7 corsages, 3 of them wrist": three of the seven, and four of no particular kind.
const someOf = pattern(
  '<s:count> (<material>)? <w:piece> (,|\\(|:|-|and|with|of which)? (of which)? (about)? <a:count> (of (them|those|which|these|em))? (is|are|to be|being|as|in)? (the)? (<p:piece>|pin|pins|wrist|wrists) (ones|one)? (\\))?',
);
const someShared = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = someOf.in(tokens, 0, tokens.length);
  if (match === undefined) return undefined;
  const { s, w, a } = match.kept;
  const at = tokens.findIndex((token, index) => index > match.start && token === a);
  const part = tokens
    .slice(at + 1, match.end)
    .map(kindOf)
    .find((kind) => kind !== undefined);
  const whole = kindOf(w);
  const told = tokens.slice(match.start, match.end).some((token) => /^(of|of which|\()$/.test(token.text));
  if (!told || part === undefined || whole === undefined || part === whole || !(whole === 'unspecified' || part.includes(whole)))
    return undefined;
  if (
    amount(a) >= amount(s) ||
    s?.number?.max !== undefined ||
    (tokens[match.end]?.text === ',' && tokens[match.end + 1]?.number?.form === 'plain' && kindOf(tokens[match.end + 2]) !== undefined)
  )
    return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  const behind = priceBehind.at(tokens, match.end, tokens.length);
  const price = behind?.kept['c']?.number;
  return found(reader, match.start, price === undefined ? match.end : (behind?.end ?? match.end), [
    { fact: 'pieces', piece: whole, count: amount(s) - amount(a) },
    { fact: 'pieces', piece: part, count: amount(a) },
    ...(price === undefined || price.max !== undefined ? [] : [{ fact: 'price' as const, ...priceEach(price) }]),
  ]);
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const priced =
    firstThen(reader) ??
    sharesBySize(reader) ??
    sharesByPrice(reader) ??
    piecesOfSets(reader) ??
    forCouples(reader) ??
    countsAtFirst(reader) ??
    kindBehind(reader) ??
    restOfKind(reader);
  if (priced !== undefined) return [priced];
  const worn = sharesByWearer(reader);
  if (worn.length > 0) return worn;
  const match = shares.in(tokens, 0, tokens.length);
  if (match === undefined) {
    const some = someShared(reader);
    return some === undefined ? [] : [some];
  }
  const { s, w, a, b } = match.kept;
  const after = (count: Token | undefined): Token | undefined => {
    const at = count === undefined ? -1 : tokens.indexOf(count, match.start);
    let place = at + 1;
    while (/^(x|on|the|are|for|to|be|of|them)$/.test(tokens[place]?.text ?? '')) place += 1;
    return tokens[place];
  };
  const [first, second, whole] = [kindOf(after(a)), kindOf(after(b)), kindOf(w)];
  if (first === undefined || second === undefined || whole === undefined || first === second) return [];
  if (amount(a) + amount(b) !== amount(s) || !(whole === 'unspecified' || (first.includes(whole) && second.includes(whole)))) return [];
  if (!allFree(reader, match.start, match.end)) return [];
  // A price behind the last share alone is for both.
  const common = match.kept['c'] ?? (match.kept['d'] === undefined ? match.kept['e'] : undefined);
  const behind = common === undefined && match.kept['e'] === undefined ? priceBehind.at(tokens, match.end, tokens.length) : undefined;
  const price = (common ?? behind?.kept['c'])?.number;
  const facts: Unworded[] = [
    { fact: 'pieces', piece: first, count: amount(a), ...pricedEach(match.kept['d']) },
    { fact: 'pieces', piece: second, count: amount(b), ...(match.kept['d'] === undefined ? {} : pricedEach(match.kept['e'])) },
  ];
  if (price !== undefined && price.max === undefined) facts.push({ fact: 'price', ...priceEach(price) });
  return [found(reader, match.start, behind !== undefined && price?.max === undefined ? behind.end : match.end, facts)];
};

export const kindShares: Phrase = { name: 'kind shares', examples: [], find };
