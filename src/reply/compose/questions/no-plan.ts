// Why an event has no bench plan, and what would give it one.

import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { dateSpan, text } from '../../span.ts';
import { fullDate } from '../../words/dates.ts';

export const noPlan = ({ event, today, manner }: Answer): readonly Block[] => {
  if (event.cancelled) return [{ block: 'answer', line: text`This event is cancelled: it is not on the bench.` }];
  if (!event.date) return [{ block: 'answer', line: text`There is no event date in this thread yet. When is it?` }];
  if (event.lines.length === 0) return [{ block: 'answer', line: text`There are no pieces in this thread yet. How many?` }];
  const when = dateSpan(fullDate(event.date, manner));
  return [
    {
      block: 'answer',
      line:
        event.date < today
          ? text`The event was on ${when}: there is nothing left to plan.`
          : text`${when} is further ahead than I plan: three years.`,
    },
  ];
};
