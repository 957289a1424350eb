// An event's own rules ("this one at 3.5 and 25 % labour"): which one holds for a kind of piece.

import type { PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';

export type EventRule = FactOf<'rule'>;

/** The newest rule of this sort for the piece, else for every piece. */
export const ruleFor = (rules: readonly EventRule[], what: EventRule['what'], piece: PieceKind | undefined): EventRule | undefined =>
  rules.findLast((rule) => rule.what === what && rule.piece !== undefined && rule.piece === piece) ??
  rules.findLast((rule) => rule.what === what && rule.piece === undefined);
