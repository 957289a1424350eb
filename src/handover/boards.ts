// Which piece goes on which board or in which box. One kind and one material to a board: fresh pieces are chilled where dried ones must stay dry.

import { boardRule } from '../handbook/packing.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { EventState } from '../thread/event.ts';
import { type HandedPiece, handedPieces, type WithoutPiece } from './handed-pieces.ts';
import { hasImplant } from './wearer-cares.ts';

export interface Board {
  readonly number: number; // from 1, through all boards and boxes
  readonly of: number; // boards and boxes in all
  readonly on: 'board' | 'box';
  readonly piece: PieceKind;
  readonly material?: Material;
  readonly places: readonly HandedPiece[]; // at least one
}

export interface BoardsLaid {
  readonly boards: readonly Board[];
  readonly without: readonly WithoutPiece[]; // wearers the order has no piece for
}

/** Boards in the order's order. The last of a kind may be part full. */
export const layBoards = (event: EventState): BoardsLaid => {
  const { pieces, without } = handedPieces(event);
  const chunks: HandedPiece[][] = [];
  for (const one of pieces) {
    const last = chunks.at(-1);
    const [first] = last ?? [];
    const fits = first?.piece === one.piece && first.material === one.material && (last?.length ?? 0) < boardRule(one.piece).perBoard;
    if (last && fits) last.push(one);
    else chunks.push([one]);
  }
  const boards = chunks.flatMap((places, at): readonly Board[] => {
    const [first] = places;
    if (first === undefined) return [];
    const { piece, material } = first;
    const { on } = boardRule(piece);
    return [{ number: at + 1, of: chunks.length, on, piece, ...(material === undefined ? {} : { material }), places }];
  });
  return { boards, without };
};

export interface BoardLabel {
  readonly board: Board;
  readonly holds: readonly { readonly role: string; readonly count: number; readonly noMagnet?: true }[]; // in the order on the board
  readonly unnamed: number;
}

/** What is written on the board itself: its number, its pieces and who they are for. */
export const boardLabel = (board: Board): BoardLabel => {
  const holds = new Map<string, { readonly count: number; readonly noMagnet?: true }>();
  for (const { named } of board.places) {
    if (!named) continue;
    const { role } = named.wearer;
    const before = holds.get(role);
    const noMagnet = hasImplant(named.wearer) || before?.noMagnet === true;
    holds.set(role, { count: (before?.count ?? 0) + 1, ...(noMagnet ? { noMagnet: true as const } : {}) });
  }
  return {
    board,
    holds: [...holds].map(([role, held]) => ({ role, ...held })),
    unnamed: board.places.filter(({ named }) => named === undefined).length,
  };
};

/** "Board 1", "Box 2". */
export const boardName = ({ on, number }: Pick<Board, 'on' | 'number'>): string => `${on === 'board' ? 'Board' : 'Box'} ${number}`;
