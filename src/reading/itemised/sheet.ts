// A quote sheet put together from its lines: the items, what each of their figures is, the sums beneath them, and whether all of it agrees.

import { type Decimal, decimal } from '../../values/decimal.ts';
import type { Reader } from '../phrase.ts';
import { linesOf } from '../text/lines.ts';
import type { Stretch } from '../text/message.ts';
import { textOf } from '../text/token.ts';
import { type Figures, lineOf } from './figures.ts';
import { type Heading, headingIn } from './heading.ts';
import { behindPlace, type ItemLine, itemLine, type Other, type Piece } from './item-lines.ts';
import { type Stands, type Summed, standing, taxOf } from './sheet-tax.ts';
import { type Sum, sumIn, type Total } from './sums.ts';

type Bare = 'each' | 'line';

export interface Sheet {
  readonly items: readonly ItemLine[];
  readonly heading: Heading | undefined;
  readonly sums: readonly Sum[];
  readonly stands: ReadonlyMap<Total, Stands>;
  readonly tax: ReturnType<typeof taxOf>;
  readonly bare: Bare | 'open'; // what a price with no word of it is
  readonly ofOthers: boolean; // somebody else's, or of another time
}

const isPiece = (item: ItemLine): item is Piece => item.is === 'piece';
const isItem = (item: ItemLine): item is Piece | Other => item.is !== 'strange';

// Numbers before the items are the list's own where they count up from one and leave each item a number of its own.
const inOrder = (reader: Reader, lines: readonly Stretch[], heading: Heading | undefined): readonly ItemLine[] | undefined => {
  let place = 1;
  const items: ItemLine[] = [];
  for (const line of lines) {
    const placed = behindPlace(reader, line, place) > line.start;
    const item = itemLine(reader, line, { place: placed ? place : undefined, heading: heading?.columns });
    if (item === undefined) continue;
    if (!placed || (isPiece(item) && item.figures.count === undefined)) return undefined;
    items.push(item);
    place += 1;
  }
  const counted = items.some((item) => isPiece(item) && Object.keys(item.figures).length > 1);
  return place > 2 && (counted || heading?.columns.includes('count') === true) ? items : undefined;
};

const itemsIn = (reader: Reader, lines: readonly Stretch[], heading: Heading | undefined): readonly ItemLine[] =>
  inOrder(reader, lines, heading) ?? lines.flatMap((line) => itemLine(reader, line, { place: undefined, heading: heading?.columns }) ?? []);

const summed = (item: ItemLine, bare: Bare): Decimal | undefined => {
  if (item.is === 'strange') return undefined;
  const known = item.is === 'other' ? item.sum : lineOf(item.figures);
  return known ?? bareSum(item.figures, bare);
};
const bareSum = (figures: Figures | undefined, bare: Bare): Decimal | undefined => {
  const price = figures?.either?.number.amount;
  if (price === undefined) return undefined;
  return decimal(price).times(bare === 'line' ? 1 : (figures?.count?.number.amount ?? 1));
};
const agrees = (stands: ReadonlyMap<Total, Stands>): boolean =>
  [...stands.values()].some((how) => how === 'lines' || how === 'lines and tax');

// Prices with no word of what they are: as the sums beneath them tell; undefined where those do not.
const bareOf = (items: readonly ItemLine[], sums: readonly Sum[]): Bare | undefined => {
  if (!items.some((item) => isPiece(item) && item.figures.either !== undefined && Number(item.figures.count?.number.amount ?? 1) > 1))
    return 'each';
  const [each, line] = (['each', 'line'] as const).map((bare) =>
    agrees(
      standing(
        items.map((item): Summed => ({ item, sum: summed(item, bare) })),
        sums,
      ),
    ),
  );
  return each === line ? undefined : each === true ? 'each' : 'line';
};

// "what we quoted last year", "the other florist's prices"
const ofOthers =
  /\b(last (year|years|year's|time|season|wedding)|previous (order|quote|job|wedding)|old (order|quote|prices?)|competitors?|(another|other|their|her|his|last) ((old|last|previous|usual|first) )?florists?|for comparison)\b/;

const within = (index: number, stretches: readonly Stretch[]): boolean => stretches.some(({ start, end }) => index >= start && index < end);

/** The quote sheet in a message; undefined where it has none, or where it is not sure what its numbers are. */
export const sheetIn = (reader: Reader): Sheet | undefined => {
  const { tokens, message } = reader;
  const heading = message.parts.flatMap((part) => headingIn(reader, part) ?? [])[0];
  const all = linesOf(tokens);
  const sumParts = message.parts.flatMap((part) => sumIn(reader, part) ?? []);
  const free = all.filter(({ start }) => !within(start, sumParts) && (heading === undefined || start >= heading.end));
  const found = itemsIn(reader, free, heading);
  const first = found.findIndex(isItem);
  let last = found.findLastIndex(isItem);
  // What is not understood counts as a line of the sheet where it stands among the others or right beneath them.
  while (last >= 0 && found[last + 1] !== undefined && tokens[(found[last + 1]?.start ?? 0) - 1]?.text === '\n') last += 1;
  const items = found.slice(Math.max(0, first), last + 1);
  const [pieces, others] = [items.filter(isPiece), items.filter(({ is }) => is === 'other')];
  const begin = items[0]?.start;
  if (begin === undefined || pieces.length === 0 || pieces.length + others.length < 2) return undefined;
  const sums = sumParts.filter(({ is, start }) => is === 'payment' || start > begin);
  const coded = pieces.some(({ from, start }) => from > start);
  const known = bareOf(items, sums);
  // Others read a plain list of counts and prices; with codes and numbers before its lines it is asked about.
  if (known === undefined && !coded) return undefined;
  const bare = known ?? 'open';
  const lines = items.map((item): Summed => ({ item, sum: bare === 'open' ? undefined : summed(item, bare) }));
  const stands = standing(lines, sums);
  const priced = pieces.some(({ figures: { each, line, either } }) => (each ?? line ?? either) !== undefined);
  const asSheet =
    heading !== undefined ||
    agrees(stands) ||
    coded ||
    pieces.some(({ figures }) => figures.proven === true) ||
    (others.length > 0 && pieces.length > 1) ||
    (pieces.length > 2 && pieces.every(({ figures }) => figures.count?.column === 'count' && figures.each !== undefined));
  if (!priced || !asSheet) return undefined;
  return { items, heading, sums, stands, tax: taxOf(lines, sums, stands), bare, ofOthers: ofOthers.test(textOf(tokens, 0, tokens.length)) };
};
