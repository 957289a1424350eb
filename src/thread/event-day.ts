// The day of the event, and the hand-over that goes before it.

import type { Day } from '../values/day.ts';
import type { EventState } from './event.ts';

/** A day of hand-over that is after the event now was said of another day of it: its hour stays, it goes. */
export const onDay = (state: EventState, date: Day): EventState => {
  const { handOver, ...rest } = state;
  if (handOver?.date === undefined || handOver.date <= date) return { ...state, date };
  return { ...rest, date, ...(handOver.time === undefined ? {} : { handOver: { time: handOver.time } }) };
};
