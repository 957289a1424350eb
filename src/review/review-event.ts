// Looking back on one event: what was planned against what came out, for the order and for one piece, and what that teaches.

import type { PieceKind } from '../handbook/pieces.ts';
import { type OrderCount, orderCounts } from '../handover/order-counts.ts';
import { plannedMinutes } from '../handover/planned-minutes.ts';
import { priceEvent } from '../pricing/price-event.ts';
import type { PricedOrder } from '../pricing/price-order.ts';
import { wageCostOf } from '../pricing/wage-cost.ts';
import type { FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import { minorUnits } from '../values/currency.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, decimal, sum, zero } from '../values/decimal.ts';
import type { Problem } from '../values/problem.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { compared } from './compared.ts';
import { type LearnedMinutes, learnedMinutes } from './learned-minutes.ts';
import { type Breakage, breakages, type LearnedSpare, learnedSpares } from './learned-spares.ts';
import { type NextPrice, nextPrices } from './next-price.ts';
import { dividedBy, figuresOf, inCoins, type Rates, type ReviewFigures, ratesOf } from './review-figures.ts';
import { type SpentOn, type SundriesFrom, spendingOf } from './spending.ts';
import { minutesTaken, type TimeTaken, timeTaken } from './time-taken.ts';

export interface Review {
  readonly pieces: number;
  readonly all: ReviewFigures;
  readonly each: ReviewFigures; // over all pieces, whatever their kind
  readonly printed: { readonly all: ReviewFigures; readonly each: ReviewFigures }; // in whole coins, the plan as the price reply prints it
  readonly afterGoods: Rates; // cost: what was bought
  readonly afterLabour: Rates; // cost: what was bought and the labour
  readonly sundriesFrom: SundriesFrom | undefined; // undefined while no spending is recorded
  readonly time: TimeTaken | undefined;
  readonly wageKnown: boolean;
  readonly next: readonly NextPrice[];
  readonly minutesLearned: readonly LearnedMinutes[];
  readonly sparesLearned: readonly LearnedSpare[];
  readonly breakages: readonly Breakage[];
  readonly unusedPieces: readonly FactOf<'actual'>[]; // "3 unused": finished pieces nobody wore, or stems nobody named
  readonly unpriced: readonly PieceKind[]; // with any of these, nothing planned is shown: it would not be the whole
  readonly notPriced?: Problem; // why the plan has no money in it
}

export interface ReviewOptions {
  readonly spentOn?: SpentOn; // default 'stems'
  readonly usualSpare?: Decimal; // percent, as on the buying list; default none
}

/** The plan's money, when the whole order has it. */
const planOf = (studio: StudioState, event: EventState, today: Day) => {
  const result = priceEvent(studio.settings, event, event.date ?? today);
  if (result === undefined) return { priced: undefined, unpriced: event.lines.map(({ piece }) => piece) };
  if (!result.ok) return { priced: undefined, unpriced: [], notPriced: result.problem };
  const { priced, unpriced, onePiece } = result.value;
  return { priced: unpriced.length > 0 || onePiece ? undefined : priced, unpriced };
};

const plannedSundries = (priced: PricedOrder | undefined, studio: StudioState, order: readonly OrderCount[]): Decimal =>
  priced?.all.exact.sundries ?? sum(order.map(({ piece, count }) => decimal(studio.settings.sundriesEach?.[piece] ?? '0').times(count)));

/** Fails with 'review-before-event' before the event's day, and 'nothing-recorded' when neither money, time nor leftovers were told. */
export const reviewEvent = (studio: StudioState, event: EventState, today: Day, options: ReviewOptions = {}): Result<Review> => {
  if (event.date !== undefined && today < event.date) return failed('review-before-event', { date: event.date });
  if (event.actuals.length === 0) return failed('nothing-recorded', { ...(event.date === undefined ? {} : { date: event.date }) });
  const { currency } = studio.settings;
  if (minorUnits(currency) === undefined) return failed('currency-unknown', { currency });
  const order = orderCounts(event);
  const pieces = order.reduce((total, { count }) => total + count, 0);
  const { priced, ...plan } = planOf(studio, event, today);
  const money = priced?.all.exact;
  const spending = spendingOf(event.actuals, plannedSundries(priced, studio, order), options.spentOn ?? 'stems');
  const time = timeTaken(event.actuals, order);
  const hourly = wageCostOf(studio.settings.labour)?.cost;
  const planned = (piece: PieceKind): Decimal => decimal(plannedMinutes(event, studio, piece).each.value);
  const minutesPlanned = sum(order.map(({ piece, count }) => planned(piece).times(count)));

  const wholesale = compared(money?.wholesale, spending?.stems.plus(spending.sundries));
  const labour = compared(money?.labour, hourly && time?.forOrder?.times(hourly).dividedBy(60));
  const minutes = compared(pieces > 0 ? minutesPlanned : undefined, time?.forOrder);
  const taken = time && minutesTaken(time, order, planned);
  const wagesEach = (piece: PieceKind): Decimal | undefined => hourly && taken?.(piece)?.times(hourly).dividedBy(60);
  const all = figuresOf(money?.exTax, wholesale, labour, minutes);
  const each = dividedBy(all, pieces);
  const [only, another] = priced?.lines ?? [];
  return ok({
    pieces,
    all,
    each,
    printed: {
      all: inCoins(all, currency, priced?.all.printed),
      each: inCoins(each, currency, only && !another ? only.each.printed : undefined),
    },
    afterGoods: ratesOf(money?.exTax, [wholesale]),
    afterLabour: ratesOf(money?.exTax, [wholesale, labour]),
    sundriesFrom: spending?.sundriesFrom,
    time,
    wageKnown: hourly !== undefined,
    next: priced ? nextPrices(priced, spending, wagesEach) : [],
    minutesLearned: learnedMinutes(time, event, studio),
    sparesLearned: learnedSpares(event, studio, options.usualSpare ?? zero),
    breakages: breakages(event),
    unusedPieces: event.actuals.filter(({ what, item }) => what === 'unused' && item === undefined),
    ...plan,
  });
};
