// One line of a quote sheet: a number in the list or an item's code, what it is of, and its figures.

import type { Decimal } from '../../values/decimal.ts';
import type { Reader } from '../phrase.ts';
import { columnBefore } from '../text/columns.ts';
import type { Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { type Column, type Figures, figuresOf, sumOf } from './figures.ts';
import { namedIn, saysMore, type Worn } from './named-item.ts';

export interface Piece extends Stretch {
  readonly is: 'piece';
  readonly worn: Worn;
  readonly figures: Figures;
  readonly from: number; // behind the line's number or the item's code
}
export interface Other extends Stretch {
  readonly is: 'other';
  readonly figures: Figures | undefined;
  readonly sum: Decimal | undefined; // undefined where its figures do not tell
}
/** A line of the sheet that is not understood. */
export interface Strange extends Stretch {
  readonly is: 'strange';
}
export type ItemLine = Piece | Other | Strange;

const longest = 24; // tokens
const divider = /^[|,:).-]$/;
// "BH-01", "C-12", "#4", "SKU 0231"
const codeShape = /^(?:[A-Za-z]{1,5}([-_/.]?)\d{1,6}[A-Za-z]?|#\d{1,6}|(?:sku|item|code|ref) ?#?\d{1,6})(?=[\s|,;:])/i;

const isName = (token: Token | undefined): boolean => token?.kind === 'word' && token.number === undefined && token.text !== 'x';

/** Where the item begins behind its code; the line's start where it has none. */
const behindCode = (reader: Reader, { start, end }: Stretch): number => {
  const { tokens, message } = reader;
  const { at, original } = message.clean;
  const from = at[(tokens[start] as Token).start] ?? 0;
  const match = codeShape.exec(original.slice(from, from + 24));
  if (match === null) return start;
  let index = start;
  while (index < end && (at[(tokens[index] as Token).start] ?? 0) < from + match[0].length) {
    if (tokens[index]?.number?.form === 'money') return start;
    index += 1;
  }
  // "BH10" alone in its column is a code; "bh10 £9.50" counts ten.
  const parted = divider.test(tokens[index]?.text ?? '') && tokens[index + 1]?.glued === false;
  const apart = match[1] !== '' || columnBefore(reader, index, start) || parted;
  while (index < end && divider.test(tokens[index]?.text ?? '')) index += 1;
  return apart && isName(tokens[index]) ? index : start;
};

/** Where the item begins behind its place in the list; the line's start where none is told. */
export const behindPlace = (reader: Reader, { start, end }: Stretch, place: number): number => {
  const { tokens } = reader;
  const first = tokens[start];
  if (first?.number?.form !== 'plain' || Number(first.number.amount) !== place) return start;
  const parted = divider.test(tokens[start + 1]?.text ?? '') || columnBefore(reader, start + 1, start);
  let index = start + 1;
  while (index < end && divider.test(tokens[index]?.text ?? '')) index += 1;
  return parted && isName(tokens[index]) ? index : start;
};

const isSheets = (tokens: readonly Token[], { start, end }: Stretch): boolean => {
  for (let index = start; index < end; index++) {
    const { means } = tokens[index] as Token;
    if (means.other !== undefined || (means.piece !== undefined && means.piece !== 'unspecified')) return true;
  }
  return false;
};

const hasFigures = (tokens: readonly Token[], { start, end }: Stretch): boolean => {
  for (let index = start; index < end; index++) if (/^(plain|money)$/.test(tokens[index]?.number?.form ?? '')) return true;
  return false;
};

/** What a line says as an item; undefined where it is none. `place`: which of the numbered lines it would be. */
export const itemLine = (
  reader: Reader,
  line: Stretch,
  { place, heading }: { readonly place: number | undefined; readonly heading: readonly Column[] | undefined },
): ItemLine | undefined => {
  const { tokens } = reader;
  const { start, end } = line;
  if (end - start > longest || !hasFigures(tokens, line)) return undefined;
  const placed = place === undefined ? start : behindPlace(reader, line, place);
  const from = behindCode(reader, { start: placed, end });
  const stretch = { start: from, end };
  const named = namedIn(reader, stretch);
  const strange: Strange | undefined = isSheets(tokens, stretch) ? { is: 'strange', ...line } : undefined;
  if (named === undefined || saysMore(tokens, stretch)) return strange;
  const figures = figuresOf(reader, stretch, heading);
  if (named.is === 'other') return { is: 'other', ...line, figures, sum: sumOf(reader, stretch, figures) };
  if (figures === undefined) return strange;
  const piece: Piece = { is: 'piece', ...line, worn: named, figures, from };
  if (figures.count !== undefined) return piece;
  return named.one && figures.either?.number.form === 'money' ? piece : strange; // "Groom's buttonhole £12"
};
