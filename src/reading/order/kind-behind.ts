// Counts with their prices and the kind of them all behind: "one for groom at 26 n eight more at 18, all lapels", "6 @ 14 and 2 @ 18, all bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isSingle, type NumberRead } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';
import { allButMaterial } from './all-but-material.ts';
import { priceEach } from './price-each.ts';

const entry = pattern(
  '(and|n|&|\\+|plus|then|,){0,2} (<n:count>|one) (more|others|other|further|extra)? (for (the|our|his|her|each)? (<r:role>|<r:owner>))? (at|@) <p:amount> (<each>)?',
);
const kindOfAll = pattern(
  "(,|-|:|\\(|\\.)? (they're|theyre|these are|that's)? (all|all of them|both|both are|all are) (of them|are|being)? (<material>)? <k:piece>",
);
const latestHour = 12; // "2 at 10 and 3 at 11" may be hours

interface Entry {
  readonly count: number;
  readonly number: NumberRead;
  readonly wearer?: string;
}

const entriesFrom = ({ tokens }: Reader, start: number): { entries: Entry[]; end: number } => {
  const entries: Entry[] = [];
  let end = start;
  for (let match = entry.at(tokens, end, tokens.length); match !== undefined; match = entry.at(tokens, end, tokens.length)) {
    const { n, r, p } = match.kept;
    const number = p?.number;
    if (!isSingle(number) || n?.number?.max !== undefined) break;
    if (number.form === 'plain' && Number(number.amount) <= latestHour && /^\d+$/.test(number.amount)) break;
    const count = n === undefined ? 1 : Number(n.number?.amount);
    const role = r?.means['role'] ?? r?.means['owner'];
    entries.push({ count, number, ...(role === undefined || role === 'rest' ? {} : { wearer: nameOf(role, count) }) });
    end = match.end;
  }
  return { entries, end };
};

/** A line for each count, where one kind alone is named and it is said to be of them all. */
export const kindBehind = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  if (tokens.filter(({ means }) => means['piece'] !== undefined).length !== 1) return undefined;
  for (let at = entry.next(tokens, 0, tokens.length); at < tokens.length; at = entry.next(tokens, at + 1, tokens.length)) {
    const { entries, end } = entriesFrom(reader, at);
    const match = entries.length > 1 ? kindOfAll.at(tokens, end, tokens.length) : undefined;
    const piece = match?.kept['k']?.means['piece'] as PieceKind | undefined;
    if (match === undefined || piece === undefined || piece === 'unspecified') continue;
    if (!allFree(reader, at, match.end)) return undefined;
    const lines = entries.map(
      ({ count, number, wearer }): Unworded => ({
        fact: 'pieces',
        piece,
        count,
        price: priceEach(number),
        ...(wearer === undefined ? {} : { wearer }),
      }),
    );
    const takes = allButMaterial(tokens, at, match.end);
    return found(reader, at, match.end, lines, takes);
  }
  return undefined;
};
