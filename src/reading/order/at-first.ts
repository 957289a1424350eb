// Counts, prices and then the kind, several times over: "10 @ 14 bouts, 5 @ 50 corsages". Once alone it could be either way round.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { isSingle, type Token } from '../text/token.ts';
import { allButMaterial } from './all-but-material.ts';
import { pricedEach } from './price-each.ts';

const line = pattern('<n:count> ((@|at) <a:amount> (<each>)?|(x)? <a:money>) <p:piece>');

// "6 & 2 bouts and corsages at 12 & 30"
const link = '(&|and|n|\\+|/)';
const rows = pattern(
  `<n:count> ${link} <m:count> <p:piece> ${link} <q:piece> ((,|-)? (at|@|:)? <a:amount> ${link} <b:amount> (<each>)?)? (respectively|resp)?`,
);
const countsInARow = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = rows.in(tokens, 0, tokens.length);
  const { n, m, p, q, a, b } = match?.kept ?? {};
  const [first, second] = [p?.means['piece'] as PieceKind | undefined, q?.means['piece'] as PieceKind | undefined];
  if (match === undefined || first === undefined || second === undefined || first === second) return undefined;
  if (n?.number?.max !== undefined || m?.number?.max !== undefined || tokens[match.end]?.means['piece'] !== undefined) return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  return found(reader, match.start, match.end, [
    { fact: 'pieces', piece: first, count: Number(n?.number?.amount), ...pricedEach(a) },
    { fact: 'pieces', piece: second, count: Number(m?.number?.amount), ...pricedEach(b) },
  ]);
};

// "12 @ 10 and 3 @ 15 bouts", "ten at 12, two at 20, all buttonholes": one kind at two prices, named behind.
const cost = (name: string): string => `((@|at) <${name}:amount> (<each>)?|(x)? <${name}:money> (<each>)?)`;
const oneKind = pattern(
  `<n:count> ${cost('a')} (,|and|&|n|+|plus|;|/){1,2} <m:count> ${cost('b')} ((,|-|:|\\(){0,1} (all|both|all of them) (<material>)?)? <p:piece>`,
);
const atTwoPrices = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = oneKind.in(tokens, 0, tokens.length);
  const { n, a, m, b, p } = match?.kept ?? {};
  if (match === undefined || [n, a, m, b].some((token) => !isSingle(token?.number))) return undefined;
  const before = tokens.slice(Math.max(0, match.start - 2), match.start);
  const next = tokens[match.end];
  if (before.some(({ text, means }) => means['piece'] !== undefined || text === 'x') || !allFree(reader, match.start, match.end))
    return undefined;
  if (
    tokens.filter(({ means }) => means['piece'] !== undefined).length > 1 ||
    next?.number !== undefined ||
    /^(x|:|=)$/.test(next?.text ?? '')
  )
    return undefined;
  const line = (count: Token | undefined, price: Token | undefined) => ({
    fact: 'pieces' as const,
    piece: p?.means['piece'] as PieceKind,
    count: Number(count?.number?.amount),
    ...pricedEach(price),
  });
  const takes = allButMaterial(tokens, match.start, match.end);
  return found(reader, match.start, match.end, [line(n, a), line(m, b)], takes);
};

export const countsAtFirst = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const row = countsInARow(reader);
  if (row !== undefined) return row;
  const priced = atTwoPrices(reader);
  if (priced !== undefined) return priced;
  const matches: Match[] = [];
  for (let index = line.next(tokens, 0, tokens.length); index < tokens.length; index = line.next(tokens, index + 1, tokens.length)) {
    const match = line.at(tokens, index, tokens.length);
    // "bouts x 10 £12 corsages": the number is of what stands before it.
    const before = tokens[index - 1];
    if (match === undefined || before?.means['piece'] !== undefined || before?.text === 'x') continue;
    matches.push(match);
    index = match.end - 1;
  }
  const [first] = matches;
  const last = matches.at(-1);
  if (first === undefined || last === undefined || (matches.length < 2 && first.kept['a']?.number?.form !== 'money')) return undefined;
  if (matches.length < 2 && /^(@|at)$/.test(tokens[first.start + 1]?.text ?? '')) return undefined;
  const pieces = tokens.filter((token) => token.means['piece'] !== undefined).length;
  const plain = matches.every(
    ({ kept: { n, a } }) => n?.number?.max === undefined && a?.number?.max === undefined && a?.number?.or === undefined,
  );
  if (pieces !== matches.length || !plain) return undefined;
  const takes = matches.flatMap(placesIn);
  if (takes.some((index) => !reader.free(index))) return undefined;
  return found(
    reader,
    first.start,
    last.end,
    matches.map(({ kept: { n, a, p } }) => ({
      fact: 'pieces',
      piece: p?.means['piece'] as PieceKind,
      count: Number(n?.number?.amount),
      ...pricedEach(a),
    })),
    takes,
  );
};
