// A season: the look-backs of many events in one table, by date, and their sums. An event that cannot be looked back on is named with the reason.

import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, sum } from '../values/decimal.ts';
import type { ProblemCode } from '../values/problem.ts';
import { type Compared, compared } from './compared.ts';
import { type Review, type ReviewOptions, reviewEvent } from './review-event.ts';
import { type Rates, ratesOf } from './review-figures.ts';

export interface PastEvent {
  readonly key: string; // the thread's
  readonly event: EventState;
}

export interface SeasonRow {
  readonly key: string;
  readonly title?: string;
  readonly date?: Day;
  readonly review: Review;
}

/** A sum over the events that have both sides, so that planned and actual are of the same events. */
export interface SeasonSum extends Compared {
  readonly events: number;
}

export interface Season {
  readonly rows: readonly SeasonRow[]; // by date, undated last
  readonly pieces: number;
  readonly exTax: { readonly total: Decimal; readonly events: number };
  readonly wholesale: SeasonSum;
  readonly labour: SeasonSum;
  readonly minutes: SeasonSum;
  readonly afterGoods: Rates; // on the sums, not a mean of percentages
  readonly afterLabour: Rates;
  readonly leftOut: readonly { readonly key: string; readonly title?: string; readonly why: ProblemCode | 'cancelled' }[];
}

const undated = '9999';

const summed = (rows: readonly SeasonRow[], figure: (review: Review) => Compared): SeasonSum => {
  const both = rows.map(({ review }) => figure(review)).filter(({ over }) => over !== undefined);
  const side = (of: 'planned' | 'actual'): Decimal | undefined =>
    both.length === 0 ? undefined : sum(both.flatMap((one) => one[of] ?? []));
  return { ...compared(side('planned'), side('actual')), events: both.length };
};

/** Rates on the sums of the events whose costs are all known on both sides. */
const rates = (rows: readonly SeasonRow[], costs: readonly ((review: Review) => Compared)[]): Rates => {
  const known = rows.filter(({ review }) => review.all.exTax !== undefined && costs.every((cost) => cost(review).over !== undefined));
  const income = known.length === 0 ? undefined : sum(known.flatMap(({ review }) => review.all.exTax ?? []));
  return ratesOf(
    income,
    costs.map((cost) => summed(known, cost)),
  );
};

const wholesale = (review: Review): Compared => review.all.wholesale;
const labour = (review: Review): Compared => review.all.labour;

export const seasonOf = (events: readonly PastEvent[], studio: StudioState, today: Day, options: ReviewOptions = {}): Season => {
  const rows: SeasonRow[] = [];
  const leftOut: { key: string; title?: string; why: ProblemCode | 'cancelled' }[] = [];
  for (const { key, event } of events) {
    const named = { key, ...(event.title === undefined ? {} : { title: event.title }) };
    const review = reviewEvent(studio, event, today, options);
    if (event.cancelled) leftOut.push({ ...named, why: 'cancelled' });
    else if (!review.ok) leftOut.push({ ...named, why: review.problem.code });
    else rows.push({ ...named, ...(event.date === undefined ? {} : { date: event.date }), review: review.value });
  }
  rows.sort((a, b) => (a.date ?? undated).localeCompare(b.date ?? undated));
  const priced = rows.flatMap(({ review }) => review.all.exTax ?? []);
  return {
    rows,
    pieces: rows.reduce((total, { review }) => total + review.pieces, 0),
    exTax: { total: sum(priced), events: priced.length },
    wholesale: summed(rows, wholesale),
    labour: summed(rows, labour),
    minutes: summed(rows, (review) => review.all.minutes),
    afterGoods: rates(rows, [wholesale]),
    afterLabour: rates(rows, [wholesale, labour]),
    leftOut,
  };
};
