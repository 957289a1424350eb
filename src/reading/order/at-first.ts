// Counts, prices and then the kind, several times over: "10 @ 14 bouts, 5 @ 50 corsages". Once alone it could be either way round.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { currencyFields } from './read-order.ts';

const line = pattern('<n:count> (@|at) <a:amount> (<each>)? <p:piece>');

export const countsAtFirst = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const matches: Match[] = [];
  for (let index = line.next(tokens, 0, tokens.length); index < tokens.length; index = line.next(tokens, index + 1, tokens.length)) {
    const match = line.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    matches.push(match);
    index = match.end - 1;
  }
  const [first] = matches;
  const last = matches.at(-1);
  if (first === undefined || last === undefined || matches.length < 2) return undefined;
  const pieces = tokens.filter((token) => token.means['piece'] !== undefined).length;
  const plain = matches.every(
    ({ kept: { n, a } }) => n?.number?.max === undefined && a?.number?.max === undefined && a?.number?.or === undefined,
  );
  if (pieces !== matches.length || !plain) return undefined;
  const takes = matches.flatMap(({ start, end }) => Array.from({ length: end - start }, (_, offset) => start + offset));
  if (takes.some((index) => !reader.free(index))) return undefined;
  return found(
    reader,
    first.start,
    last.end,
    matches.map(({ kept: { n, a, p } }) => ({
      fact: 'pieces',
      piece: p?.means['piece'] as PieceKind,
      count: Number(n?.number?.amount),
      price: { amount: a?.number?.amount ?? '0', per: 'each', ...(a?.number === undefined ? {} : currencyFields(a.number)) },
    })),
    takes,
  );
};
