// A number of pieces shared out in a list with a price each: "8 bouts (groom $18, 7 groomsmen $14)", "6 corsages: 2 mums at 30, 4 aunts at 24".
// The shares are the order; the number before them is their sum.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { countFor, nameOf } from '../wearers/role-counts.ts';
import { priceEach } from './price-each.ts';
import { describes } from './told-by-size.ts';

const whole = pattern('<w:count> (<material>)? <k:piece> (<all>)? (,|:|-|\\(|of which|with|so|\\.){1,2}');
const who = '(the|our|a|an|his|her)? (<r:role>|<r:owner>)';
const cost = '(is|are|at|@|=|:|-|to be){0,2} <p:amount> (<each>)?';
const entryForms = [
  pattern(`(<n:count>)? (x|for)? ${who} (one|ones|own)? ${cost}`),
  pattern(`<n:count> (x)? <d:word> (one|ones|size|sized)? ${cost}`),
  pattern(`<n:count> (x)? (at|@)? <p:amount> (<each>)? for ${who}`),
  pattern(`<n:count> (x)? (at|@) <p:amount> (<each>)?`),
  pattern(`(the)? (rest|others|remainder|other ones) ${cost}`),
];
const between = /^([,;&+]|and|plus|then|n|with|but|\.)$/;
const rest = /^(rest|others|remainder|other ones)$/;

interface Share {
  readonly count?: number; // what is left, where nothing says how many
  readonly number: NumberRead;
  readonly wearer?: string;
}

const shareOf = ({ tokens }: Reader, { kept, start, end }: Match): Share | undefined => {
  const { n, r, d, p } = kept;
  const next = tokens[end];
  if (p?.number === undefined || p.number.max !== undefined || n?.number?.max !== undefined || next?.means['all'] !== undefined)
    return undefined;
  if (next?.means['piece'] !== undefined || next?.number !== undefined) return undefined;
  const said = n?.number === undefined ? undefined : Number(n.number.amount);
  if (d !== undefined && (rest.test(d.text) ? false : !describes(d, (said ?? 0) > 1))) return undefined;
  const role = r?.means['role'] ?? r?.means['owner'];
  const others = tokens.slice(start, end).some(({ text }) => rest.test(text));
  const count =
    said ??
    (others || r === undefined || role === 'rest' ? undefined : r.means['owner'] !== undefined ? 1 : countFor(r.text, undefined, false));
  return {
    number: p.number,
    ...(count === undefined ? {} : { count }),
    ...(role === undefined || role === 'rest' ? {} : { wearer: nameOf(role, count ?? 2) }),
  };
};

const shareAt = (reader: Reader, at: number): { share: Share; end: number } | undefined => {
  for (const form of entryForms) {
    const match = form.at(reader.tokens, at, reader.tokens.length);
    const share = match === undefined ? undefined : shareOf(reader, match);
    if (match !== undefined && share !== undefined) return { share, end: match.end };
  }
  return undefined;
};

const sharesFrom = (reader: Reader, start: number): { shares: Share[]; end: number } => {
  const { tokens } = reader;
  const shares: Share[] = [];
  let end = start;
  for (let at = start; at < tokens.length && shares.length < 12; ) {
    const read = shareAt(reader, at);
    if (read === undefined) break;
    shares.push(read.share);
    end = read.end;
    at = end;
    while (at < end + 2 && between.test(tokens[at]?.text ?? '')) at += 1;
  }
  return { shares, end: tokens[end]?.text === ')' ? end + 1 : end };
};

const factOf = (piece: PieceKind, { number, wearer }: Share, count: number): Unworded => ({
  fact: 'pieces',
  piece,
  count,
  price: priceEach(number),
  ...(wearer === undefined ? {} : { wearer }),
});

const sharesAt = (reader: Reader, match: Match): Finding | undefined => {
  const { shares, end } = sharesFrom(reader, match.end);
  const [all, kind] = [match.kept['w'] as Token, match.kept['k']?.means['piece'] as PieceKind];
  if (shares.length < 2 || all.number?.max !== undefined) return undefined;
  if (!allFree(reader, match.start, end)) return undefined;
  const open = shares.filter(({ count }) => count === undefined);
  const left = Number(all.number?.amount) - shares.reduce((sum, { count }) => sum + (count ?? 0), 0);
  // Shares that do not make the whole up say nothing sure of either.
  const least = open[0]?.wearer === undefined ? 1 : 2;
  if (open.length > 1 || (open.length === 1 ? left < least : left !== 0)) return { start: match.start, end, held: true };
  return found(
    reader,
    match.start,
    end,
    shares.map((share) => factOf(kind, share, share.count ?? left)),
  );
};

/** The lines in place of each whole that is shared out. */
export const sharesByWearer = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (
    let at = whole.next(reader.tokens, 0, reader.tokens.length);
    at < reader.tokens.length;
    at = whole.next(reader.tokens, at + 1, reader.tokens.length)
  ) {
    const match = whole.at(reader.tokens, at, reader.tokens.length);
    const finding = match === undefined ? undefined : sharesAt(reader, match);
    if (finding !== undefined) findings.push(finding);
  }
  return findings;
};
