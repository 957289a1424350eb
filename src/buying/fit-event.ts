// "What fits?" for one kind of piece of an event: its count, and the stems money its price leaves, against the price list.

import type { PieceKind } from '../handbook/pieces.ts';
import type { PricedEvent } from '../pricing/price-event.ts';
import { kindMeant } from '../thread/apply-recipe.ts';
import type { EventState } from '../thread/event.ts';
import type { Decimal } from '../values/decimal.ts';
import type { Result } from '../values/result.ts';
import { usualSpare } from './buy-for-events.ts';
import { hasPart } from './fit-choices.ts';
import type { Item } from './item.ts';
import { shortlist } from './shortlist.ts';
import { type WhatFits, whatFits } from './what-fits.ts';

export interface FitForEvent {
  readonly piece: PieceKind;
  readonly pieces: number;
  readonly stems: Decimal; // money for one piece, exact
  readonly searched: number; // plants looked at
  readonly plants: number; // plants on the list that could stand in a recipe
  readonly fits: Result<WhatFits>;
}

/** For the kind asked about, else the kind most are ordered of. Undefined while nothing of it has a price. */
export const fitEvent = (
  event: EventState,
  price: Result<PricedEvent> | undefined,
  items: readonly Item[],
  asked: PieceKind | undefined,
): FitForEvent | undefined => {
  if (!price?.ok) return undefined;
  const { lines } = price.value.priced;
  const count = (piece: PieceKind) => lines.reduce((total, line) => total + (line.piece === piece ? line.count : 0), 0);
  const kinds = [...new Set(lines.map((line) => line.piece))].sort((a, b) => count(b) - count(a));
  const piece = asked === undefined || asked === 'unspecified' ? kinds[0] : kindMeant(kinds, asked);
  const line = lines.find((one) => one.piece === piece);
  if (piece === undefined || line === undefined) return undefined;
  const { stems } = line.each.exact;
  const wanted = { stemsBudget: stems, pieces: count(piece), usualSpare: usualSpare([event]) };
  const looked = shortlist(items, wanted);
  const plants = items.filter(hasPart).length;
  return { piece, pieces: wanted.pieces, stems, searched: looked.filter(hasPart).length, plants, fits: whatFits(looked, wanted) };
};
