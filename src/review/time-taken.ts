// How long it really took. "Took 3 hours for 12" times twelve pieces; "took 9 hours" covers whatever no count does. Entries add up: a job is done in several sittings.

import type { PieceKind } from '../handbook/pieces.ts';
import type { OrderCount } from '../handover/order-counts.ts';
import type { FactOf } from '../reading/fact.ts';
import { type Decimal, decimal, sum } from '../values/decimal.ts';

export interface KindTime {
  readonly piece: PieceKind;
  readonly minutes: Decimal;
  readonly timed: number; // pieces these minutes made
}

export interface TimeTaken {
  readonly recorded: Decimal; // minutes, all entries together
  readonly forOrder: Decimal | undefined; // for every piece ordered; undefined where some kind was not timed at all
  readonly estimated: boolean; // some pieces were not timed: they count as the timed ones of their kind
  readonly kinds: readonly KindTime[]; // timed by themselves; entries for several kinds at once are in no kind
}

type Timed = FactOf<'actual'> & { readonly minutes: number };

const isTimed = (fact: FactOf<'actual'>): fact is Timed => fact.what === 'minutes' && fact.minutes !== undefined && fact.minutes > 0;

const minutesIn = (facts: readonly Timed[]): Decimal => sum(facts.map(({ minutes }) => decimal(minutes)));

/** No count, or the whole order's: "took 3 hours for 12" where twelve are ordered. */
const wholeOf =
  (order: readonly OrderCount[]) =>
  ({ count }: Timed): boolean =>
    count === undefined || count <= 0 || (order.length > 1 && count >= order.reduce((total, one) => total + one.count, 0));

/** The kind of the order an entry is about; undefined when it is about several. */
const kindOf = ({ piece }: Timed, order: readonly OrderCount[]): PieceKind | undefined => {
  const [only, another] = order;
  if (piece !== undefined && order.some((one) => one.piece === piece)) return piece;
  return another === undefined ? only?.piece : undefined;
};

/** Undefined while no time is recorded. */
export const timeTaken = (actuals: readonly FactOf<'actual'>[], order: readonly OrderCount[]): TimeTaken | undefined => {
  const timed = actuals.filter(isTimed);
  if (timed.length === 0) return undefined;
  const isWhole = wholeOf(order);
  const pooled = timed.filter((fact) => kindOf(fact, order) === undefined);
  const kinds = order.flatMap(({ piece, count }): readonly KindTime[] => {
    const own = timed.filter((fact) => kindOf(fact, order) === piece);
    const counted = own.reduce((total, fact) => total + (isWhole(fact) ? 0 : (fact.count ?? 0)), 0);
    return own.length === 0 ? [] : [{ piece, minutes: minutesIn(own), timed: own.some(isWhole) ? Math.max(count, counted) : counted }];
  });
  const recorded = minutesIn(timed);
  if (pooled.some(isWhole)) return { recorded, forOrder: recorded, estimated: false, kinds };
  if (pooled.length > 0 || kinds.length < order.length) return { recorded, forOrder: undefined, estimated: false, kinds };
  const short = kinds.filter(({ piece, timed: done }) => done < (order.find((one) => one.piece === piece)?.count ?? 0));
  const missing = short.map(({ piece, minutes, timed: done }) => {
    const count = order.find((one) => one.piece === piece)?.count ?? 0;
    return minutes.times(count - done).dividedBy(done);
  });
  return { recorded, forOrder: recorded.plus(sum(missing)), estimated: short.length > 0, kinds };
};

/** Minutes one piece of each kind really took: as it was timed, else its share of the time no kind was timed for, by planned minutes. */
export const minutesTaken =
  (time: TimeTaken, order: readonly OrderCount[], planned: (piece: PieceKind) => Decimal) =>
  (piece: PieceKind): Decimal | undefined => {
    const own = time.kinds.find((kind) => kind.piece === piece);
    if (own) return own.minutes.dividedBy(own.timed);
    const untimed = order.filter((one) => !time.kinds.some((kind) => kind.piece === one.piece));
    const plannedFor = sum(untimed.map((one) => planned(one.piece).times(one.count)));
    const rest = time.forOrder?.minus(sum(time.kinds.map(({ minutes }) => minutes)));
    return plannedFor.isZero() ? undefined : rest?.times(planned(piece)).dividedBy(plannedFor);
  };
