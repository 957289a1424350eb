// Who wears them, said in an aside behind the pieces: "8 bouts (groom, 5 groomsmen, 2 dads) $16 each". It may name fewer than there are, never more.

import type { PieceKind } from '../../handbook/pieces.ts';
import { countLeft, countRight } from '../order/mention-count.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { readWearers } from '../wearers/read-wearers.ts';
import type { Entry } from '../wearers/wearers-read.ts';

const reach = 14; // tokens from the pieces to the aside: their price and its tax may stand between
const longest = 24;
const stops = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || token.text === '?';
// A dash with room round it may stand as a comma by now.
const divides = ({ tokens }: Reader, index: number): boolean => {
  const token = tokens[index];
  return token !== undefined && !token.glued && (token.text === '-' || token.text === ',');
};

/** Where the aside that opens here closes: at its bracket, or at a dash or the end of the line where a dash opened it. */
const closeOf = (reader: Reader, open: number): number | undefined => {
  const { tokens } = reader;
  const bracket = tokens[open]?.text === '(';
  for (let index = open + 1; index <= open + longest; index++) {
    if (bracket && tokens[index]?.text === ')') return index;
    if (!bracket && (divides(reader, index) || stops(tokens[index]))) return index;
    if (stops(tokens[index])) return undefined;
  }
  return undefined;
};

// Their number, where they are the pieces named last.
const piecesBefore = (reader: Reader, open: number): { piece: PieceKind; count: Token } | undefined => {
  const { tokens } = reader;
  for (let index = open - 1; index >= Math.max(0, open - reach) && !stops(tokens[index]); index--) {
    const piece = tokens[index]?.means['piece'] as PieceKind | undefined;
    if (piece === undefined) continue;
    const left = countLeft(reader, index);
    const count = left.countIndex === undefined ? countRight(reader, index + 1)?.count : left.count;
    // "corsages - 2 mums, bouts - 4 ushers": the four are in the aside itself.
    return count === undefined || tokens.indexOf(count) >= open ? undefined : { piece, count };
  }
  return undefined;
};

const saysMore = (token: Token): boolean =>
  token.means['piece'] !== undefined ||
  token.means['each'] !== undefined ||
  token.means['ingredient'] !== undefined ||
  (token.number !== undefined && (token.number.form !== 'plain' || token.number.max !== undefined));

const asideAt = (reader: Reader, open: number): { entries: readonly Entry[]; end: number } | undefined => {
  const { tokens } = reader;
  const close = closeOf(reader, open);
  if (close === undefined || firstWhere(tokens, open + 1, close, (token) => token.means['role'] !== undefined) < 0) return undefined;
  if (firstWhere(tokens, open, close, (token, index) => saysMore(token) || !reader.free(index)) >= 0) return undefined;
  const pieces = piecesBefore(reader, open);
  if (pieces === undefined) return undefined;
  const { entries, clean, unknown } = readWearers(reader, { start: open + 1, end: close, asked: false });
  const sum = entries.reduce((all, { count }) => all + count, 0);
  const number = pieces.count.number;
  const rest = Number(number?.amount) - sum; // "20 bouts (groom, 4 ushers)"
  if (!clean || unknown || sum < 2 || number?.max !== undefined || rest < 0 || (rest > 0 && tokens[open]?.text !== '(')) return undefined;
  const worn = pieces.piece === 'unspecified' ? entries : entries.map((entry) => ({ ...entry, piece: pieces.piece }));
  return { entries: worn, end: tokens[close]?.text === ')' || divides(reader, close) ? close + 1 : close };
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const wearers: Extract<Unworded, { fact: 'wearers' }>['wearers'][number][] = [];
  const takes: number[] = [];
  for (let open = 1; open < tokens.length; open++) {
    if (tokens[open]?.text !== '(' && !divides(reader, open)) continue;
    const aside = asideAt(reader, open);
    if (aside === undefined) continue;
    wearers.push(...aside.entries.map(({ at: _, most: __, ...entry }) => entry));
    for (let index = open; index < aside.end; index++) takes.push(index);
    open = aside.end - 1;
  }
  const [first, last] = [takes[0], takes.at(-1)];
  return first === undefined || last === undefined ? [] : [found(reader, first, last + 1, [{ fact: 'wearers', wearers }], takes)];
};

export const wearersAside: Phrase = {
  name: 'wearers in an aside',
  examples: ['8 bouts (groom, 5 groomsmen, 2 dads) at 16'],
  find,
};
