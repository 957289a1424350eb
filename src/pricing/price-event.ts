// What an event's order comes to so far: the lines that have a price are priced, the ones that have none are named.

import type { PieceKind } from '../handbook/pieces.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { onlyTold } from '../thread/apply-order.ts';
import type { EventState, OrderLine } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { ok, type Result } from '../values/result.ts';
import { orderOf, type RangeEnd } from './order-of-event.ts';
import { type PricedOrder, priceOrder } from './price-order.ts';
import { termsOf } from './terms.ts';

export interface PricedEvent {
  readonly priced: PricedOrder;
  readonly unpriced: readonly PieceKind[];
  readonly onePiece: boolean; // nobody said how many: the figures are for one piece
}

type Told = NonNullable<EventState['told']>[PieceKind];

const oneOf = (kind: PieceKind | undefined, told: Told): OrderLine => ({
  piece: kind ?? 'unspecified',
  count: 1,
  ...(told ? { price: { ...told, per: 'each' } } : {}),
});

/** Undefined while nothing has a price. Of a range of prices ("20 to 25") the `end` asked for. */
export const priceEvent = (
  settings: StudioSettings,
  event: EventState,
  today: Day,
  end: RangeEnd = 'least',
): Result<PricedEvent> | undefined => {
  const onePiece = event.lines.length === 0;
  const kind = onlyTold(event);
  const told = kind === undefined ? undefined : event.told?.[kind];
  if (onePiece && event.price?.per !== 'each' && !told) return undefined;
  const lines = onePiece ? [oneOf(kind, told)] : event.lines;
  const priced = lines.filter((line) => line.price || event.price);
  if (priced.length === 0) return undefined;
  const terms = termsOf(settings, event, today);
  if (!terms.ok) return terms;
  const order = priceOrder(orderOf({ ...event, lines: priced }, end), terms.value);
  if (!order.ok) return order;
  return ok({ priced: order.value, unpriced: lines.filter((line) => !priced.includes(line)).map((line) => line.piece), onePiece });
};
