// Remembers which calendar steps were given out as a file or a picture, so that a later file can withdraw what no longer holds.

import type { FactOf } from '../reading/fact.ts';
import { parseDay } from '../values/day.ts';
import type { EventState, HeldStep } from './event.ts';

export const applyCalendar = (state: EventState, { given, steps = [] }: FactOf<'calendar'>): EventState => {
  const before = state.calendarGiven;
  if (!given) return before ? { ...state, calendarGiven: { ...before, toldStale: true } } : state;
  const last = steps.flatMap((step): HeldStep[] => {
    const date = parseDay(step.date);
    return date ? [{ id: step.id, title: step.title, date }] : [];
  });
  const held = before?.held ?? [];
  const now = given === 'file' ? [...held.filter((old) => !last.some((step) => step.id === old.id)), ...last] : held;
  return { ...state, calendarGiven: { last, held: now } };
};
