// The facts that ways of saying "made" give: so many, all of them, so many of so many, a share, made again.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Match } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import { isRangeOrChoice, isSingle, type Token } from '../text/token.ts';

export type Build = (match: Match) => Unworded | undefined;

export const amountOf = (token: Token | undefined): number => Number(token?.number?.amount ?? Number.NaN);
export const pieceIn = (match: Match): { piece?: PieceKind } => kindOf(match.kept['p']);

export const counts: Build = (match) => ({ fact: 'made', count: amountOf(match.kept['n']), ...pieceIn(match) });
export const allOf: Build = (match) => ({ fact: 'made', all: true, ...pieceIn(match) });
export const none: Build = (match) => ({ fact: 'made', count: 0, ...pieceIn(match) });
export const again: Build = (match) => ({ fact: 'made', count: amountOf(match.kept['n']), remade: true, ...pieceIn(match) });

export const outOf: Build = (match) => {
  if ([match.kept['n'], match.kept['m']].some((token) => isRangeOrChoice(token?.number))) return undefined;
  const [count = 0, of = 0] = match.kept['s']?.number?.parts ?? [amountOf(match.kept['n']), amountOf(match.kept['m'])];
  if (of < count || (of <= 4 && match.kept['s'] !== undefined && match.kept['p'] === undefined)) return undefined; // "2/3 done" may be two thirds
  return { fact: 'made', count, of, total: true, ...(count === of ? { all: true } : {}), ...pieceIn(match) };
};

// "all but 3 of the 20 bouts are done"
export const allButSome: Build = (match) => {
  const { n, m } = match.kept;
  const [gone, of] = [n === undefined ? 1 : amountOf(n), amountOf(m)];
  const unsure = [n, m].some((token) => isRangeOrChoice(token?.number));
  return unsure || !(gone < of) ? undefined : { fact: 'made', count: of - gone, of, total: true, ...pieceIn(match) };
};

// "we're on 33/50": what could be a day of the calendar is left to the dates.
export const atShare: Build = (match) => {
  const [count = 0, of = 0] = match.kept['s']?.number?.parts ?? [];
  return count > 31 || of > 31 || (count > 12 && of > 12) ? outOf(match) : undefined;
};

export const sofar: Build = (match) => ({ fact: 'made', count: amountOf(match.kept['n']), total: true, ...pieceIn(match) });
export const share =
  (fraction: string): Build =>
  (match) => {
    if (match.end - match.start < 2) return undefined;
    const of = match.kept['m']?.number;
    const count = of === undefined ? Number.NaN : Number(of.amount) * Number(fraction);
    // "half of the 30 bouts" is fifteen of them.
    return !isRangeOrChoice(of) && Number.isInteger(count)
      ? { fact: 'made', count, of: Number(of?.amount), total: true, ...pieceIn(match) }
      : { fact: 'made', fraction, ...pieceIn(match) };
  };
// "60% there"
export const percentDone: Build = (match) => {
  const part = match.kept['f']?.number;
  const hundredth = Number(part?.amount) / 100;
  return !isSingle(part) || !(hundredth > 0 && hundredth < 1)
    ? undefined
    : { fact: 'made', fraction: String(hundredth), ...pieceIn(match) };
};

// The dried half of a mixed piece: its fresh half follows later.
export const bases: Build = (match) => ({ fact: 'made', count: amountOf(match.kept['n']), stage: 'base', ...pieceIn(match) });
