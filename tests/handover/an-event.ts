// Invented events and studio for the hand-over and look-back tests.

import type { StudioState } from '../../src/studio/studio.ts';
import { type EventState, newEvent, type OrderLine } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';

export const yard: StudioState = {
  settings: {
    name: 'Creel and Cork',
    region: 'GB',
    subdivision: 'SCT',
    timeZone: 'Europe/London',
    currency: 'GBP',
    minutes: { buttonhole: 15 },
  },
  packs: [],
  crew: [],
  drying: [],
};

export const withSettings = (settings: Partial<StudioState['settings']>): StudioState => ({
  ...yard,
  settings: { ...yard.settings, ...settings },
});

export const anEvent = (more: Partial<EventState> = {}): EventState => ({ ...newEvent, title: 'harbour dance', ...more });

export const line = (count: number, piece: OrderLine['piece'] = 'buttonhole', more: Partial<OrderLine> = {}): OrderLine => ({
  piece,
  count,
  ...more,
});

type Wearer = EventState['wearers'][number];

export const wears = (wearer: string, count = 1, more: Partial<Wearer> = {}): Wearer => ({ wearer, count, ...more });

export const eventDay = '2027-03-13' as Day;
