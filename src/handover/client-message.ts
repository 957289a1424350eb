// What a client may be told: what they ordered, who wears it, when, and what they pay with the tax in it. Costs, labour and margins never enter here.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import { wearingSide } from '../handbook/wearing.ts';
import type { PricedEvent } from '../pricing/price-event.ts';
import type { PricedLine } from '../pricing/price-order.ts';
import type { TaxBasis } from '../pricing/tax-terms.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import type { Origin } from '../values/known.ts';
import { fixedMoney, printNumber } from '../values/money.ts';
import { pinOnList } from './pin-on-list.ts';
import { type KindCount, type Wearer, wearersList } from './wearers.ts';

/** Money as text with the currency's decimals, printed so that lines add up to the total. */
export interface ClientLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly material?: Material;
  readonly wearer?: string;
  readonly each?: string; // with tax; left out where the line has no price
  readonly all?: string;
}

export interface ClientPrice {
  readonly currency: string; // ISO 4217
  readonly total: string; // what the client pays
  readonly beforeTax: string;
  readonly tax: {
    readonly basis: TaxBasis;
    readonly basisOrigin: Origin;
    readonly rateOrigin: Origin;
    readonly parts: readonly ClientTax[];
  };
  readonly partial: boolean; // some pieces have no price yet: the total is not the whole
}

export interface ClientTax {
  readonly name: string; // "VAT"
  readonly rate: string; // percent
  readonly amount: string;
}

export interface ClientMessage {
  readonly title?: string;
  readonly date?: Day;
  readonly time?: string; // HH:MM
  readonly pinOn: { readonly date?: Day; readonly time?: string; readonly said: boolean }; // where nobody said, the event's own day and time
  readonly lines: readonly ClientLine[];
  readonly wearers: readonly Pick<Wearer, 'role' | 'count' | 'piece'>[]; // notes are left out: they can be about a person's health
  readonly differences: readonly KindCount[]; // to ask the client about
  readonly worn: readonly { readonly piece: PieceKind; readonly side: string }[];
  readonly price?: ClientPrice; // left out while nothing has a price, and for a single piece nobody has counted
}

const linePrice = (line: PricedLine, currency: string): { readonly each: string; readonly all: string } => ({
  each: fixedMoney(line.each.printed.price, currency),
  all: fixedMoney(line.all.printed.price, currency),
});

const pricedLines = (event: EventState, priced: PricedEvent | undefined): readonly ClientLine[] => {
  const prices = priced === undefined || priced.onePiece ? [] : [...priced.priced.lines];
  return event.lines.map((line): ClientLine => {
    const material = line.material ?? event.material;
    const at = prices.findIndex((one) => one.piece === line.piece && one.count === line.count && one.wearer === line.wearer);
    const [price] = at < 0 ? [] : prices.splice(at, 1);
    return {
      piece: line.piece,
      count: line.count,
      ...(material === undefined ? {} : { material }),
      ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
      ...(price === undefined || priced === undefined ? {} : linePrice(price, priced.priced.currency)),
    };
  });
};

const clientPrice = ({ priced, unpriced }: PricedEvent): ClientPrice => {
  const { currency, terms, all, taxParts } = priced;
  return {
    currency,
    total: fixedMoney(all.printed.price, currency),
    beforeTax: fixedMoney(all.printed.exTax, currency),
    tax: {
      basis: terms.tax.basis.value,
      basisOrigin: terms.tax.basis.origin,
      rateOrigin: terms.tax.rate.origin,
      parts: taxParts.map(({ name, rate, amount }) => ({ name, rate: printNumber(rate), amount: fixedMoney(amount, currency) })),
    },
    partial: unpriced.length > 0,
  };
};

/** The facts of a confirmation. `priced` is what `priceEvent` gave for this event, if it could be priced. */
export const clientMessage = (event: EventState, priced?: PricedEvent): ClientMessage => {
  const list = wearersList(event);
  const when = { date: event.handOver?.date ?? event.date, time: event.handOver?.time ?? event.time };
  const rows = pinOnList(event).groups.flatMap((group) => group.rows);
  const kinds = [...new Set(rows.map((row) => row.wornAs))];
  return {
    ...(event.title === undefined ? {} : { title: event.title }),
    ...(event.date === undefined ? {} : { date: event.date }),
    ...(event.time === undefined ? {} : { time: event.time }),
    pinOn: {
      ...(when.date === undefined ? {} : { date: when.date }),
      ...(when.time === undefined ? {} : { time: when.time }),
      said: event.handOver !== undefined,
    },
    lines: pricedLines(event, priced),
    wearers: list.wearers.map(({ role, count, piece }) => ({ role, count, piece })),
    differences: list.differences,
    worn: kinds.filter((piece) => piece !== 'unspecified').map((piece) => ({ piece, side: wearingSide(piece).side })),
    ...(priced === undefined || priced.onePiece ? {} : { price: clientPrice(priced) }),
  };
};
