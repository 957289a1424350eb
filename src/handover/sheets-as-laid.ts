// Boards and packing list in the words that thread and printed sheets show, so that paper lays nothing of its own.

import { keepingDegrees } from '../handbook/packing.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { sourceLine } from '../handbook/sources.ts';
import { oneOf } from '../reading/wearers/role-counts.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { type Board, type BoardLabel, boardName, layBoards } from './boards.ts';
import { type PackingList, packingList, type ToTake } from './packing-list.ts';
import { type PinOnRow, pinOnList } from './pin-on-list.ts';

/** The studio's words for a kind. */
export type PieceNames = (piece: PieceKind) => { readonly one: string; readonly many: string };

export interface PlaceInWords {
  readonly wearer: string; // "Sam, usher"; "groomsmen, 1 of 5"; "not named yet"
  readonly piece: string;
  readonly side: string;
  readonly note: string;
  readonly label: string; // the wearer as a board label names them: "no magnet: grandfather" where there is an implant, first so that a long name cannot push it off
  readonly is: 'named' | 'unnamed';
}

export interface BoardInWords {
  readonly number: number;
  readonly on: 'board' | 'box';
  readonly kind: PieceKind;
  readonly places: readonly PlaceInWords[];
  readonly pieces: string; // "12 buttonholes, dried"
}

export interface SheetsAsLaid {
  readonly laid: {
    readonly boards: readonly BoardInWords[];
    readonly withoutPiece: readonly { readonly wearer: string; readonly missing: number }[];
  };
  readonly packing: {
    readonly pieces: readonly string[];
    readonly take: readonly string[];
    readonly boards: readonly { readonly label: string; readonly holds: string }[];
    readonly keep: readonly { readonly words: string; readonly source: string }[];
  };
}

const some = (count: number, piece: PieceKind, names: PieceNames): string =>
  `${count} ${count === 1 ? names(piece).one : names(piece).many}`;

const piecesOn = ({ places, piece, material }: Board, names: PieceNames): string =>
  `${some(places.length, piece, names)}${material === undefined ? '' : `, ${material}`}`;

/** "Sam, ushers" where there is a name; else "ushers, 1 of 3", or "groom" where there is one. */
const personOf = ({ role, name, number, of }: NonNullable<PinOnRow['wearer']>): string => {
  if (name !== undefined) return `${name}, ${of === 1 ? role : oneOf(role)}`;
  return of === 1 ? role : `${role}, ${number} of ${of}`;
};

const placeOf = (row: PinOnRow, names: PieceNames): PlaceInWords => {
  const { wearer, side, note } = row;
  const piece = names(row.wornAs).one;
  if (wearer === undefined) return { wearer: 'not named yet', piece, side, note, label: 'not named yet', is: 'unnamed' };
  const name = personOf(wearer);
  return { wearer: name, piece, side, note, label: row.noMagnet ? `no magnet: ${name}` : name, is: 'named' };
};

const holdsOf = ({ holds, unnamed }: BoardLabel): string =>
  [
    ...holds.map(({ role, count, noMagnet }) => `${noMagnet ? 'no magnet: ' : ''}${role}${count === 1 ? '' : ` × ${count}`}`),
    ...(unnamed > 0 ? [`${unnamed} not named yet`] : []),
  ].join(', ');

const counted: Readonly<Partial<Record<ToTake, readonly [string, string]>>> = {
  'covered boards': ['covered board, labelled', 'covered boards, labelled'],
  boxes: ['box, labelled', 'boxes, labelled'],
  pins: ['pin on or with the pieces', 'pins on or with the pieces'],
  'spare pins': ['spare pin', 'spare pins'],
  magnets: ['magnet: count it back in', 'magnets: count them back in'],
  'magnets if used': [
    'magnet, if it is to take the pin’s place: count it back in',
    'magnets, if they are to take the pins’ place: count them back in',
  ],
  'sheets of tissue': ['sheet of tissue', 'sheets of tissue'],
};
const longer: Readonly<Partial<Record<ToTake, string>>> = {
  'tape and ribbon ends': 'tape, and an end of each ribbon for repairs',
  'cool box': 'cool box; wrap the ice packs so that they touch no flower',
  'needle and thread': 'needle and thread, for the pieces that take no loose pin',
};

const takeWords = ({ what, count }: PackingList['take'][number]): string =>
  count === undefined ? (longer[what] ?? what) : `${count} ${counted[what]?.[count === 1 ? 0 : 1] ?? what}`;

export const sheetsAsLaid = (event: EventState, studio: StudioState, names: PieceNames): SheetsAsLaid => {
  const { groups } = pinOnList(event);
  const list = packingList(event, studio);
  return {
    laid: {
      boards: groups.map(({ board, rows }) => ({
        number: board.number,
        on: board.on,
        kind: board.piece,
        places: rows.map((row) => placeOf(row, names)),
        pieces: piecesOn(board, names),
      })),
      withoutPiece: layBoards(event).without.map(({ wearer, short }) => ({ wearer: wearer.role, missing: short })),
    },
    packing: {
      pieces: list.pieces.map(({ piece, count }) => some(count, piece, names)),
      take: list.take.map(takeWords),
      boards: list.boards.map((label) => ({
        label: `${boardName(label.board)}: ${piecesOn(label.board, names)}`,
        holds: holdsOf(label),
      })),
      keep: list.keeping.rows.map((row) => ({
        words: [`${row.what}: ${row.how}`, keepingDegrees(row)].filter((words) => words !== '').join('; '),
        source: row.sources.map(sourceLine).join('; '),
      })),
    },
  };
};
