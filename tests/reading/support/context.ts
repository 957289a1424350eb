// Where the corpus messages are said: Wednesday 20 January 2027, a day-first studio in Britain, nothing known yet.

import type { ReadingContext } from '../../../src/reading/reading.ts';
import type { Day } from '../../../src/values/day.ts';

export const context: ReadingContext = {
  today: '2027-01-20' as Day,
  dayFirst: true,
  currency: 'GBP',
  region: 'GB',
  open: undefined,
  pieces: [],
  eventDate: undefined,
  items: [],
};
