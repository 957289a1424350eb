// The pieces of one event that are made alike: so many of a kind, with these lines in each. A wearer with lines of their own is a batch apart.

import type { PieceKind } from '../handbook/pieces.ts';
import { recipeOf } from '../thread/apply-recipe.ts';
import type { EventState, OrderLine } from '../thread/event.ts';
import { linesFor, type RecipeLine, wearersNamed } from './recipe-lines.ts';

export interface Batch {
  readonly piece: PieceKind;
  readonly wearer?: string;
  readonly pieces: number;
  readonly lines: readonly RecipeLine[]; // in each piece; empty when the kind has no recipe yet
}

const sameWearer = (a: string | undefined, b: string): boolean => a?.toLowerCase() === b.toLowerCase();

/** People of this name still to be given a piece of this kind. A wearer with lines but no count is one person: "groom: 2 roses". */
const peopleNamed = (event: EventState, wearer: string, line: OrderLine): number => {
  const listed = event.wearers.filter((one) => sameWearer(one.wearer, wearer));
  const forThis = listed.filter((one) => one.piece === undefined || one.piece === line.piece);
  if (listed.length > 0) return forThis.reduce((total, one) => total + one.count, 0);
  return 1;
};

/** Every piece of the order in exactly one batch. Counts are the order's own (the lower of a range). */
export const batchesOf = (event: EventState): readonly Batch[] => {
  const served = new Set(event.lines.flatMap((line) => (line.wearer === undefined ? [] : [line.wearer.toLowerCase()])));
  const byLine = event.lines.flatMap((line): readonly Batch[] => {
    const facts = recipeOf(event, line.piece);
    if (line.wearer !== undefined)
      return [{ piece: line.piece, wearer: line.wearer, pieces: line.count, lines: linesFor(facts, line.wearer) }];
    let rest = line.count;
    const own = wearersNamed(facts).flatMap((wearer): readonly Batch[] => {
      if (served.has(wearer.toLowerCase())) return [];
      served.add(wearer.toLowerCase());
      const pieces = Math.min(rest, peopleNamed(event, wearer, line));
      rest -= pieces;
      return pieces > 0 ? [{ piece: line.piece, wearer, pieces, lines: linesFor(facts, wearer) }] : [];
    });
    return rest > 0 ? [...own, { piece: line.piece, pieces: rest, lines: linesFor(facts) }] : own;
  });
  // Lines of one kind in two materials, or at two prices, are made alike.
  const batches: Batch[] = [];
  for (const batch of byLine) {
    const same = batch.wearer === undefined ? batches.findIndex(({ piece, wearer }) => piece === batch.piece && wearer === undefined) : -1;
    const alike = batches[same];
    if (alike === undefined) batches.push(batch);
    else batches[same] = { ...alike, pieces: alike.pieces + batch.pieces };
  }
  return batches;
};
