// A kind over the shares of those who wear it: "corsage recipe: MOB gets 3 roses, MOG gets 2 roses". The kind is meant of all of them.

import type { PieceKind } from '../../handbook/pieces.ts';
import { quantity } from '../goods/quantity.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { roleHeading } from './recipe-headings.ts';

const over = pattern(
  '(the|our)? (recipe for (the|our)? <p:piece> (:|-|,|=|<line>){1,2}|<p:piece> ((recipe|recipes|flowers|stems) (:|-|,|=|is|are|<line>){0,2}|(:|-|=|,|<line>){1,2}))',
);

const alone = pattern('(the|our)? (recipe for (the|our)? <p:piece>|<p:piece> (recipe|recipes|flowers|stems)?) (:|-|=)?');

// "MOB gets 3 roses"
const opensWithShare = ({ tokens }: Reader, start: number, end: number): boolean => {
  const role = roleHeading.at(tokens, start, end);
  const amount = role === undefined ? undefined : quantity(tokens, role.end);
  return amount !== undefined && amount.next < end && tokens[amount.next]?.means['ingredient'] !== undefined;
};

export interface KindOver {
  readonly piece: PieceKind;
  readonly start: number;
  readonly below: readonly Part[];
  readonly next: number; // the part behind them
}

/** The kind that a part opens with and what stands below it, where that opens with what somebody gets. */
export const kindOverWearers = (reader: Reader, parts: readonly Part[], at: number): KindOver | undefined => {
  const { tokens } = reader;
  const part = parts[at] as Part;
  const line = alone.at(tokens, part.start, part.end);
  const head = line?.end === part.end ? line : over.at(tokens, part.start, part.end);
  const piece = head?.kept['p']?.means['piece'] as PieceKind | undefined;
  if (head === undefined || piece === undefined || piece === 'unspecified') return undefined;
  const below: Part[] = head.end < part.end ? [{ ...part, start: head.end }] : [];
  let next = at + 1;
  if (below.length === 0)
    for (let after = parts[next]; after !== undefined && opensWithShare(reader, after.start, after.end); after = parts[++next])
      below.push(after);
  const [first] = below;
  if (first === undefined || !opensWithShare(reader, first.start, first.end)) return undefined;
  // "bouts: groom 2 roses, corsages 3 roses": another kind is named below it.
  const other = below.some(({ start, end }) =>
    tokens
      .slice(start, end)
      .some(({ means }) => means['piece'] !== undefined && means['ingredient'] === undefined && means['piece'] !== piece),
  );
  return other ? undefined : { piece, start: part.start, below, next };
};
