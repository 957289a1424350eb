// Who is at the bench on one day, by what was said of it or else by the studio's usual hours.

import type { Day } from '../values/day.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumber } from './day-number.ts';
import { type BenchDay, workingDays } from './working-days.ts';

export interface HandsOnDay extends BenchDay {
  readonly said: boolean; // somebody spoke of this very day
}

export const handsOnDay = (rules: BenchRules, day: Day): HandsOnDay => ({
  ...workingDays(rules).on(dayNumber(day)),
  said: rules.crew.some((fact) => fact.date === day),
});
