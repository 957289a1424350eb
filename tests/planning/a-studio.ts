// A small invented yard and its orders, for tests of dates. Open Tuesday to Friday, five hours, two people; no public holidays unless a test asks for them.

import { type BenchRules, benchRules } from '../../src/planning/bench-rules.ts';
import { type EventToPlan, eventToPlan } from '../../src/planning/event-to-plan.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';

export const day = (text: string): Day => text as Day;

export const aStudio = (settings: Partial<StudioSettings> = {}, more: Partial<StudioState> = {}): StudioState => ({
  settings: {
    name: 'Netmakers’ Yard',
    region: 'GB',
    subdivision: 'SCT',
    timeZone: 'Europe/London',
    currency: 'GBP',
    bench: { people: 2, hours: { tuesday: 5, wednesday: 5, thursday: 5, friday: 5 }, openOnHolidays: true },
    leadDays: 3,
    ...settings,
  },
  packs: [],
  crew: [],
  drying: [],
  ...more,
});

export const rulesOf = (studio: StudioState = aStudio()): BenchRules => benchRules(studio);

/** Forty buttonholes on a Saturday, unless the test says otherwise. */
export const anEvent = (event: Partial<EventState> = {}, studio: StudioState = aStudio(), key = 'harbour dance'): EventToPlan => {
  const lines = [{ piece: 'buttonhole' as const, count: 40 }];
  const found = eventToPlan(key, { ...newEvent, lines, date: day('2027-03-13'), material: 'dried', ...event }, studio);
  if (!found) throw new Error('this event cannot be planned');
  return found;
};
