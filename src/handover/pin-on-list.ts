// The sheet for the day: one row for every piece, board by board, with the side it is worn on and the care its wearer needs.

import type { PieceKind } from '../handbook/pieces.ts';
import { wearingSide } from '../handbook/wearing.ts';
import type { EventState } from '../thread/event.ts';
import { type Board, layBoards } from './boards.ts';
import type { HandedPiece, WithoutPiece } from './handed-pieces.ts';
import { careWords, hasImplant } from './wearer-cares.ts';

export interface PinOnRow {
  readonly wearer: { readonly role: string; readonly name?: string; readonly number: number; readonly of: number } | undefined; // undefined: a spare or a missing name
  readonly piece: PieceKind; // as the order counts it
  readonly wornAs: PieceKind;
  readonly side: string;
  readonly note: string; // the note as written, then the care it calls for; '' for none
  readonly noMagnet: boolean; // the wearer has an implant
  readonly done: false; // the box to tick by hand
}

export interface PinOnGroup {
  readonly board: Board;
  readonly rows: readonly PinOnRow[];
}

export interface PinOnList {
  readonly groups: readonly PinOnGroup[];
  readonly without: readonly WithoutPiece[];
  readonly dissent: readonly { readonly piece: PieceKind; readonly says: string }[]; // where sources disagree on the side
}

const noteOf = ({ named }: HandedPiece): string => {
  if (named === undefined) return '';
  const { note, cares, wornAs } = named.wearer;
  return [note, ...cares.map((care) => careWords(care.value, wornAs))].filter((words) => words !== '').join('; ');
};

const whoOf = ({ wearer, number }: NonNullable<HandedPiece['named']>): PinOnRow['wearer'] => {
  const name = wearer.names[number - 1];
  return { role: wearer.role, ...(name === undefined ? {} : { name }), number, of: wearer.count };
};

const rowOf = (place: HandedPiece): PinOnRow => {
  const wornAs = place.named?.wearer.wornAs ?? place.piece;
  return {
    wearer: place.named && whoOf(place.named),
    piece: place.piece,
    wornAs,
    side: wearingSide(wornAs).side,
    note: noteOf(place),
    noMagnet: place.named !== undefined && hasImplant(place.named.wearer),
    done: false,
  };
};

export const pinOnList = (event: EventState): PinOnList => {
  const { boards, without } = layBoards(event);
  const groups = boards.map((board) => ({ board, rows: board.places.map(rowOf) }));
  const kinds = [...new Set(groups.flatMap(({ rows }) => rows.map((row) => row.wornAs)))];
  const dissent = kinds.map((piece) => ({ piece, says: wearingSide(piece).dissent })).filter(({ says }) => says !== '');
  return { groups, without, dissent };
};
