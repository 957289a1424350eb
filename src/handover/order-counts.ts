// How many pieces of each kind the order holds. Every sheet, board and list counts from here, so that none can disagree with the order.

import type { PieceKind } from '../handbook/pieces.ts';
import type { EventState } from '../thread/event.ts';

export interface OrderCount {
  readonly piece: PieceKind;
  readonly count: number;
  readonly countMax?: number; // "40 to 45": the sheets count 40, and the range has to be settled before hand-over
}

/** Kinds in the order they were first said, each once. Lines of nothing are left out. */
export const orderCounts = (event: EventState): readonly OrderCount[] => {
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  return kinds
    .map((piece): OrderCount => {
      const lines = event.lines.filter((line) => line.piece === piece);
      const count = lines.reduce((total, line) => total + line.count, 0);
      const most = lines.reduce((total, line) => total + Math.max(line.count, line.countMax ?? 0), 0);
      return { piece, count, ...(most > count ? { countMax: most } : {}) };
    })
    .filter(({ count }) => count > 0);
};
