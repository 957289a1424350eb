// What can still be done when material is late: the ways that remain, each with the day it would be ready and whether that is soon enough for the bench.

import type { DaysRange } from '../handbook/days-range.ts';
import { dryingTime } from '../handbook/drying.ts';
import { freshHoursAhead } from '../handbook/make-ahead.ts';
import type { InTime, Remedy, StepName } from './calendar-step.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import { hasBeen, leadDays } from './supply.ts';
import type { SupplyNeed } from './supply-need.ts';

/** The day the stems can be here, ordered today if they are not. */
export const arrivalOf = ({ event, rules, days, now }: SupplyNeed): number =>
  hasBeen(event, 'received') ? now : days.after(now, leadDays(event, rules).days);

export const canStillBeReady = (need: SupplyNeed, step: StepName, drying: DaysRange | undefined): readonly Remedy[] => {
  const { event, supply, lastStart, days, now } = need;
  const arrives = arrivalOf(need);
  const soonEnough = (day: number): InTime => (day <= lastStart ? 'yes' : 'no');
  const range = (least: number, most: number): InTime => (most <= lastStart ? 'yes' : least <= lastStart ? 'only if it dries fast' : 'no');
  if (supply !== 'dried' || !drying) {
    if (step === 'condition' || step === 'material ready') return [{ do: 'do it today' }];
    return [
      { do: 'order today', arrives: dayNumbered(arrives), inTime: soonEnough(arrives) },
      { do: 'fetch it from the market', by: dayNumbered(Math.max(now, days.onOrBefore(lastStart))) },
    ];
  }
  if (step === 'check the drying' || step === 'material ready') return [{ do: 'do it today' }];
  const inBox = dryingTime(event.ingredients[0]?.name, 'silica gel');
  const freshDay = Math.max(now, days.before(dayNumber(event.date), 1));
  const ahead = (dayNumber(event.date) - freshDay) * 24;
  const longest = Math.min(...event.lines.map(({ piece }) => freshHoursAhead[piece].most));
  return [
    {
      do: 'hang on arrival',
      hang: dayNumbered(arrives),
      readyFrom: dayNumbered(arrives + drying.least),
      readyBy: dayNumbered(arrives + drying.most),
      inTime: range(arrives + drying.least, arrives + drying.most),
    },
    {
      do: 'silica gel',
      readyFrom: dayNumbered(arrives + inBox.least),
      readyBy: dayNumbered(arrives + inBox.most),
      inTime: range(arrives + inBox.least, arrives + inBox.most),
    },
    { do: 'buy it ready dried', arrives: dayNumbered(arrives), inTime: soonEnough(arrives) },
    { do: 'make them fresh', on: dayNumbered(freshDay), ...(ahead > longest ? { hoursAhead: ahead } : {}) },
  ];
};
