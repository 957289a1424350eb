// What a client may be told: what they ordered, who wears it, when, and what they pay with the tax in it. Costs, labour and margins never enter here.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import { wearingSide } from '../handbook/wearing.ts';
import { type ClientFigures, type ClientLine, clientFigures } from '../pricing/client-figures.ts';
import type { PricedEvent } from '../pricing/price-event.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import type { Origin } from '../values/known.ts';
import { pinOnList } from './pin-on-list.ts';
import { type KindCount, type Wearer, wearersList } from './wearers.ts';

export interface ClientPiece {
  readonly piece: PieceKind;
  readonly count: number;
  readonly material?: Material;
  readonly wearer?: string;
  readonly price?: ClientLine; // left out where the line has none yet
}

export interface ClientPrice extends ClientFigures {
  readonly basisOrigin: Origin; // an assumed basis or rate is said to be one
  readonly rateOrigin: Origin;
  readonly partial: boolean; // some pieces have no price yet: the total is not the whole
}

export interface ClientMessage {
  readonly title?: string;
  readonly date?: Day;
  readonly time?: string; // HH:MM
  readonly handOver: { readonly date?: Day; readonly time?: string; readonly said: boolean }; // ready to pin on from then; where nobody said, the event's own day and time
  readonly pieces: readonly ClientPiece[];
  readonly wearers: readonly Pick<Wearer, 'role' | 'count' | 'approx' | 'piece'>[]; // notes are left out: they can be about a person's health
  readonly differences: readonly KindCount[]; // to ask the client about
  readonly worn: readonly { readonly piece: PieceKind; readonly side: string }[];
  readonly price?: ClientPrice; // left out while nothing has a price, and for a single piece nobody has counted
}

/** The order's lines, each with its own price. A line without one was left out of the pricing. */
const piecesOf = (event: EventState, figures: ClientFigures | undefined): readonly ClientPiece[] => {
  const prices = [...(figures?.lines ?? [])];
  return event.lines.map((line): ClientPiece => {
    const material = line.material ?? event.material;
    const [price] = line.price || event.price ? prices.splice(0, 1) : []; // the same lines, in the same order
    return {
      piece: line.piece,
      count: line.count,
      ...(material === undefined ? {} : { material }),
      ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
      ...(price === undefined ? {} : { price }),
    };
  });
};

const priceOf = ({ priced, unpriced }: PricedEvent, figures: ClientFigures): ClientPrice => ({
  ...figures,
  basisOrigin: priced.terms.tax.basis.origin,
  rateOrigin: priced.terms.tax.rate.origin,
  partial: unpriced.length > 0,
});

/** The facts of a confirmation. `priced` is what `priceEvent` gave for this event, if it could be priced. */
export const clientMessage = (event: EventState, priced?: PricedEvent): ClientMessage => {
  const list = wearersList(event);
  const figures = priced === undefined || priced.onePiece ? undefined : clientFigures(priced.priced);
  const when = { date: event.handOver?.date ?? event.date, time: event.handOver?.time ?? event.time };
  const rows = pinOnList(event).groups.flatMap((group) => group.rows);
  const kinds = [...new Set(rows.map((row) => row.wornAs))];
  return {
    ...(event.title === undefined ? {} : { title: event.title }),
    ...(event.date === undefined ? {} : { date: event.date }),
    ...(event.time === undefined ? {} : { time: event.time }),
    handOver: {
      ...(when.date === undefined ? {} : { date: when.date }),
      ...(when.time === undefined ? {} : { time: when.time }),
      said: event.handOver !== undefined,
    },
    pieces: piecesOf(event, figures),
    wearers: list.wearers.map(({ role, count, approx, piece }) => ({ role, count, ...(approx ? { approx } : {}), piece })),
    differences: list.differences,
    worn: kinds.filter((piece) => piece !== 'unspecified').map((piece) => ({ piece, side: wearingSide(piece).side })),
    ...(priced === undefined || figures === undefined ? {} : { price: priceOf(priced, figures) }),
  };
};
