// What an event is called where nobody has named it: its order and its date.

import type { EventState } from '../../thread/event.ts';
import type { Manner } from '../answer.ts';
import { shortDate } from './dates.ts';
import { counted } from './names.ts';

export const eventTitle = (event: EventState, manner: Manner): string => {
  if (event.title) return event.title;
  const [first] = event.lines;
  const order = first ? counted(first.count, first.piece, manner.says) : 'an event';
  return event.date ? `${order} for ${shortDate(event.date, manner)}` : order;
};
