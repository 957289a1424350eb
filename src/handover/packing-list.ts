// What goes in the van: boards and boxes with what is on each, pins counted from the pieces themselves, and how it is all kept on the way.

import type { Caution } from '../handbook/cautions.ts';
import { boardRule, sparePins } from '../handbook/packing.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { type BoardLabel, boardLabel, layBoards } from './boards.ts';
import type { HandedPiece } from './handed-pieces.ts';
import { type KeepingRows, keepingOf } from './keeping.ts';
import { type OrderCount, orderCounts } from './order-counts.ts';
import { hasImplant } from './wearer-cares.ts';
import { cautionsOnSheet, fixingsOf } from './work-at-hand.ts';

/** Things beside the pieces, to tick off. A thing without a count is one of its sort or as much as there is. */
export type ToTake =
  | 'covered boards'
  | 'boxes'
  | 'pins'
  | 'spare pins'
  | 'magnets' // counted out and counted back in
  | 'magnets if used' // talked of but in no recipe: the pins are packed all the same
  | 'sheets of tissue'
  | 'scissors'
  | 'tape and ribbon ends'
  | 'cool box'
  | 'needle and thread' // for pieces that take no loose pin
  | 'this list, the pin-on sheet and a pen';

export interface PackingList {
  readonly pieces: readonly OrderCount[];
  readonly boards: readonly BoardLabel[];
  readonly take: readonly { readonly what: ToTake; readonly count?: number }[]; // common practice, no source
  readonly keeping: KeepingRows;
  readonly cautions: readonly Caution[];
}

const tissueEach = 2; // sheets for one board or box: over and under. Common practice, no source.

/** Pins for one piece as it is worn: a corsage that goes on a wrist needs none. */
const pinsFor = ({ piece, named }: HandedPiece): number => boardRule(named?.wearer.wornAs ?? piece).pinsEach;

const takesNoPin = ({ named }: HandedPiece): boolean => named?.wearer.cares.some(({ value }) => value === 'child') ?? false;

const takesNoMagnet = ({ named }: HandedPiece): boolean => named !== undefined && hasImplant(named.wearer);

/** Whoever packs has to know it too: a loose magnet beside the piece is as near as one on it. */
const noMagnetRows = (places: readonly HandedPiece[]): KeepingRows['rows'] =>
  [...new Set(places.filter(takesNoMagnet).flatMap(({ named }) => named?.wearer.role ?? []))].map((role) => ({
    what: role,
    how: 'implant: no magnet on or beside this piece',
    sources: [],
  }));

export const packingList = (event: EventState, studio: StudioState): PackingList => {
  const { boards } = layBoards(event);
  const places = boards.flatMap((board) => board.places);
  const onMagnet = places.filter((place) => fixingsOf(event, place.piece).includes('magnet') && !takesNoMagnet(place));
  const pinned = places.filter((place) => !onMagnet.includes(place) && !takesNoPin(place));
  const pins = pinned.reduce((total, place) => total + pinsFor(place), 0);
  const spokenOf = event.care?.heard.includes('magnet') === true;
  const onMagnetIfUsed = spokenOf ? pinned.filter((place) => pinsFor(place) > 0 && !takesNoMagnet(place)).length : 0;
  const sewn = places.filter((place) => takesNoPin(place) && pinsFor(place) > 0).length;
  const flat = boards.filter(({ on }) => on === 'board').length;
  const chilled = places.some(({ material }) => material === 'fresh' || material === 'mixed');
  const keeping = keepingOf(event);
  const some = (what: ToTake, count: number) => (count > 0 ? [{ what, count }] : []);
  return {
    pieces: orderCounts(event),
    boards: boards.map(boardLabel),
    take: [
      ...some('covered boards', flat),
      ...some('boxes', boards.length - flat),
      ...some('pins', pins),
      ...some('spare pins', sparePins(pins)),
      ...some('magnets', onMagnet.length),
      ...some('magnets if used', onMagnetIfUsed),
      ...some('sheets of tissue', boards.length * tissueEach),
      ...(sewn > 0 ? [{ what: 'needle and thread' as const }] : []),
      { what: 'scissors' },
      { what: 'tape and ribbon ends' },
      ...(chilled ? [{ what: 'cool box' as const }] : []),
      { what: 'this list, the pin-on sheet and a pen' },
    ],
    keeping: { ...keeping, rows: [...keeping.rows, ...noMagnetRows(places)] },
    cautions: cautionsOnSheet('packing list', event, studio),
  };
};
