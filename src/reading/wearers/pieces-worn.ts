// The pieces that a list of wearers comes to.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import type { Entry } from './wearers-read.ts';

/** How many of each piece the wearers make, or what is said of it behind them. */
export const piecesOf = (entries: readonly Entry[], said: { piece: PieceKind; count: number } | undefined, before: number): Unworded[] => {
  const pieces = new Map<PieceKind, number>();
  const rough = new Set(entries.flatMap(({ approx, piece }) => (approx === true && piece !== undefined ? [piece] : [])));
  for (const each of entries) if (each.piece !== undefined) pieces.set(each.piece, (pieces.get(each.piece) ?? 0) + each.count);
  // "2 mums are wearing corsages so 10 bouts": of a kind that nobody was given.
  // "groom bout, 3 ushers so 4 bouts": of him and of those nobody gave one.
  if (said !== undefined && !(Number(pieces.get(said.piece)) >= said.count)) pieces.set(said.piece, said.count);
  // "20 bouts for groom, 4 ushers": the number said of the pieces stands, whoever is named; too small a number leaves it open.
  const [only] = [...pieces];
  if (before > 0 && pieces.size === 1 && only !== undefined && before !== only[1])
    return before > only[1] ? [{ fact: 'pieces', piece: only[0], count: before }] : [];
  return [...pieces].map(([piece, count]) => ({
    fact: 'pieces',
    piece,
    count,
    ...(rough.has(piece) && said?.count !== count ? { approx: true } : {}),
  }));
};

/** "4 ushers, 2 mums, bouts and corsages": the tokens without pieces that nobody was given, which are named as unread. */
export const withoutLost = ({ tokens }: Reader, { start, end }: Part, lost: boolean): number[] | undefined => {
  const all = placesIn({ start, end });
  const kept = lost ? all.filter((index) => (tokens[index]?.means['piece'] ?? 'unspecified') === 'unspecified') : all;
  return kept.length === all.length ? undefined : kept;
};
