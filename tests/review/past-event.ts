// Events that are over, with what was told about them afterwards.

import type { FactOf } from '../../src/reading/fact.ts';
import { type Review, type ReviewOptions, reviewEvent } from '../../src/review/review-event.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import type { EventState } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';
import type { Decimal } from '../../src/values/decimal.ts';
import { roundTo } from '../../src/values/rounding.ts';

type Actual = FactOf<'actual'>;

/** Settings of a studio that charges no tax, in dollars, to the cent. */
export const untaxed = { tax: { registered: false }, currency: 'USD', region: 'US', priceStep: '0.01' } as const;

export const spent = (amount: string, item?: string): Actual => ({
  fact: 'actual',
  what: 'spent',
  amount,
  ...(item === undefined ? {} : { item }),
  words: `spent ${amount}`,
});

export const took = (minutes: number, count?: number, piece?: Actual['piece']): Actual => ({
  fact: 'actual',
  what: 'minutes',
  minutes,
  ...(count === undefined ? {} : { count }),
  ...(piece === undefined ? {} : { piece }),
  words: `took ${minutes} min`,
});

export const unused = (count: number, item?: string): Actual => ({
  fact: 'actual',
  what: 'unused',
  count,
  ...(item === undefined ? {} : { item }),
  words: `${count} unused`,
});

export const dayAfter = '2027-03-14' as Day;

export const review = (studio: StudioState, event: EventState, options: ReviewOptions = {}): Review => {
  const result = reviewEvent(studio, event, dayAfter, options);
  if (!result.ok) throw new Error(`no review: ${JSON.stringify(result.problem)}`);
  return result.value;
};

export const shown = (amount: Decimal | undefined, places = 2): string | undefined =>
  amount && roundTo(amount, places, 'half up').toFixed(places);
