// Every single piece of the order, each with the person it is for: as many as are ordered, never more or fewer.
// A line said for a wearer serves that wearer first; then the list is served in the order it was written. What is left has no name yet.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { EventState } from '../thread/event.ts';
import { type Wearer, wearersList } from './wearers.ts';

export interface HandedPiece {
  readonly piece: PieceKind;
  readonly material?: Material;
  readonly named?: { readonly wearer: Wearer; readonly number: number }; // "groomsmen, 2 of 5" is number 2; left out: a spare, or a name is missing
}

export interface WithoutPiece {
  readonly wearer: Wearer;
  readonly short: number; // of the wearer's count
}

export interface HandedPieces {
  readonly pieces: readonly HandedPiece[]; // by kind and material in the order's order, named first, in the order of the wearers
  readonly without: readonly WithoutPiece[];
}

interface Stack {
  readonly piece: PieceKind;
  readonly material: Material | undefined;
  readonly forWearer: string | undefined;
  left: number;
}

const stacksOf = (event: EventState): readonly Stack[] =>
  event.lines.map((line) => ({
    piece: line.piece,
    material: line.material ?? event.material,
    forWearer: line.wearer?.trim().toLowerCase(),
    left: line.count,
  }));

// Who may take from which stack, round by round: their own, then nobody's, then what is left of other people's.
const rounds: readonly ((stack: Stack, role: string) => boolean)[] = [
  (stack, role) => stack.forWearer === role.trim().toLowerCase(),
  (stack) => stack.forWearer === undefined,
  () => true,
];

const groupOf = ({ piece, material }: { readonly piece: PieceKind; readonly material?: Material | undefined }): string =>
  `${piece} ${material ?? ''}`;

export const handedPieces = (event: EventState): HandedPieces => {
  const { wearers } = wearersList(event);
  const stacks = stacksOf(event);
  const taken = wearers.map((): Stack[] => []);
  for (const mayTake of rounds) {
    wearers.forEach((wearer, at) => {
      const own = taken[at] ?? [];
      for (const stack of stacks) {
        if (stack.piece !== wearer.piece.value || !mayTake(stack, wearer.role)) continue;
        const takes = Math.min(stack.left, wearer.count - own.length);
        stack.left -= takes;
        for (let one = 0; one < takes; one += 1) own.push(stack);
      }
    });
  }
  const of = ({ piece, material }: Stack): HandedPiece => ({ piece, ...(material === undefined ? {} : { material }) });
  const named = wearers.flatMap((wearer, at) =>
    (taken[at] ?? []).map((stack, index) => ({ ...of(stack), named: { wearer, number: index + 1 } })),
  );
  const unnamed = stacks.flatMap((stack) => Array.from({ length: stack.left }, () => of(stack)));
  const groups = [...new Set(stacks.map(groupOf))];
  return {
    pieces: groups.flatMap((group) => [...named, ...unnamed].filter((piece) => groupOf(piece) === group)),
    without: wearers.map((wearer, at) => ({ wearer, short: wearer.count - (taken[at]?.length ?? 0) })).filter(({ short }) => short > 0),
  };
};
