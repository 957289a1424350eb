// Which piece stands where: every piece of the order and every spare gets one place on one board, named for its wearer where a wearer is known.
// The pin-on sheet, the board labels and the packing list are all read from this, so their counts agree.

import { boardRule } from '../handbook/packing.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { caresInNote, wearerCustom, wearingSide } from '../handbook/wearing.ts';
import type { SheetPiece, SheetsInput, SheetWearer } from './sheet-input.ts';

export interface Place {
  readonly wearer: string; // "groomsmen, 1 of 5"; "not named yet"; "spare"
  readonly piece: string; // in the singular
  readonly side: string;
  readonly note: string;
  readonly is: 'named' | 'unnamed' | 'spare';
}

export interface Board {
  readonly number: number; // from 1, through all kinds
  readonly on: 'board' | 'box';
  readonly kind: PieceKind;
  readonly places: readonly Place[];
  readonly pieces: string; // "12 buttonholes"
}

export interface BoardsLaidOut {
  readonly boards: readonly Board[];
  readonly withoutPiece: readonly { readonly wearer: string; readonly missing: number }[]; // more wearers than pieces of their kind
}

const careNote = (wearer: SheetWearer, pinned: boolean): string => {
  const cares = caresInNote(`${wearer.note ?? ''}`);
  const child = cares.includes('child') || wearerCustom(wearer.wearer)?.child === true;
  return [
    wearer.note?.trim() ?? '',
    child && pinned ? 'child: no loose pin' : '',
    cares.includes('implant') ? 'no magnet' : '',
    cares.includes('heavy coat') && pinned ? 'long pin' : '',
  ]
    .filter((note) => note !== '')
    .join('; ');
};

const placesOf = (piece: SheetPiece, wearers: readonly SheetWearer[]): readonly Place[] => {
  const { side } = wearingSide(piece.kind);
  const pinned = boardRule(piece.kind).pinsEach > 0;
  const named = wearers.flatMap((wearer) =>
    Array.from({ length: wearer.count }, (_, index): Place => {
      const name = wearer.count === 1 ? wearer.wearer : `${wearer.wearer}, ${index + 1} of ${wearer.count}`;
      return { wearer: name, piece: piece.one, side, note: careNote(wearer, pinned), is: 'named' };
    }),
  );
  const rest = (count: number, wearer: string, is: Place['is']): Place[] =>
    Array.from({ length: Math.max(0, count) }, () => ({ wearer, piece: piece.one, side, note: '', is }));
  return [
    ...named.slice(0, piece.count),
    ...rest(piece.count - named.length, 'not named yet', 'unnamed'),
    ...rest(piece.spares, 'spare', 'spare'),
  ];
};

/** Lays every piece and spare on boards, kind by kind in the order's order. Whole boards; the last of a kind may be part full. */
export const layOutBoards = ({ pieces, wearers }: Pick<SheetsInput, 'pieces' | 'wearers'>): BoardsLaidOut => {
  const boards: Board[] = [];
  const withoutPiece: { wearer: string; missing: number }[] = [];
  for (const piece of pieces) {
    const theirs = wearers.filter((wearer) => wearer.kind === piece.kind);
    const places = placesOf(piece, theirs);
    const { perBoard, on } = boardRule(piece.kind);
    for (let from = 0; from < places.length; from += perBoard) {
      const here = places.slice(from, from + perBoard);
      const count = `${here.length} ${here.length === 1 ? piece.one : piece.many}`;
      boards.push({ number: boards.length + 1, on, kind: piece.kind, places: here, pieces: count });
    }
  }
  for (const kind of new Set(wearers.map((wearer) => wearer.kind))) {
    let room = pieces.find((piece) => piece.kind === kind)?.count ?? 0;
    for (const wearer of wearers.filter((one) => one.kind === kind)) {
      const missing = Math.max(0, wearer.count - room);
      room = Math.max(0, room - wearer.count);
      if (missing > 0) withoutPiece.push({ wearer: wearer.wearer, missing });
    }
  }
  return { boards, withoutPiece };
};
