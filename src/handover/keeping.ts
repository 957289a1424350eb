// How the pieces are kept until they are worn: each kind by its own material and the plants in its own recipe, so that a dried orchid asks for no fridge rule.

import { type Keeping, keepingFor } from '../handbook/packing.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { EventState } from '../thread/event.ts';
import { ingredientsOf } from './work-at-hand.ts';

export interface KeepingRows {
  readonly rows: readonly Keeping[]; // each once, materials before plants
  readonly materialUnknown: readonly PieceKind[]; // nobody said: no rule is shown for these
}

export const keepingOf = (event: EventState): KeepingRows => {
  const lines = event.lines.filter((line) => line.count > 0);
  const rows = lines.flatMap((line) => {
    const material = line.material ?? event.material;
    return material === undefined ? [] : keepingFor([material], ingredientsOf(event, line.piece));
  });
  const byName = new Map(rows.map((row) => [row.what, row]));
  const isMaterial = ({ what }: Keeping): number => (what.endsWith(' pieces') ? 0 : 1);
  return {
    rows: [...byName.values()].sort((a, b) => isMaterial(a) - isMaterial(b)),
    materialUnknown: [...new Set(lines.filter((line) => (line.material ?? event.material) === undefined).map((line) => line.piece))],
  };
};
