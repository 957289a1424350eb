// Of which kind a fact is in a thread whose order is known.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { EventState } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';

const isTaken = (fact: Fact): fact is FactOf<'change'> =>
  fact.fact === 'change' && fact.what === 'count' && (Number(fact.by ?? 0) < 0 || fact.to === 0);
/** More of a kind. */
export const isGiven = (fact: Fact): boolean => fact.fact === 'change' && fact.what === 'count' && Number(fact.by ?? 0) > 0;

/** "Corsages" said of an order of wrist corsages mean those; "a wrist corsage, not a pin-on" in one of corsages becomes a kind of its own. */
export const ofKindHeld = (state: EventState, fact: Fact, beside: readonly Fact[]): Fact => {
  if (!('piece' in fact) || fact.piece === undefined || fact.fact === 'pieces') return fact;
  const piece = kindInOrder(state.lines, fact.piece);
  if (piece === fact.piece) return fact;
  // "make the 4 corsages wrist ones": the four are of the kind they become.
  if (beside.some((other) => other.fact === 'change' && other.what === 'piece' && other.to === fact.piece)) return fact;
  const given = isGiven(fact) || (fact.fact === 'change' && fact.what === 'count' && Number(fact.to ?? 0) > 0);
  if (given && beside.some((other) => isTaken(other) && other.piece && kindInOrder(state.lines, other.piece) === piece)) return fact;
  return fact.fact === 'change' && fact.what === 'piece' ? { ...fact, piece, from: piece } : { ...fact, piece };
};
