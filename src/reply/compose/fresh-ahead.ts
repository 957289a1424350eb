// Fresh work that would be made longer before the event than any source allows, because no bench day is nearer: said before everything else.

import { freshHoursAhead } from '../../handbook/make-ahead.ts';
import type { EventPlan } from '../../planning/bench-plan.ts';
import { addDays } from '../../values/day.ts';
import type { Manner } from '../answer.ts';
import type { Block } from '../reply.ts';
import { strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';

/** The longest the handbook allows for what is made fresh here: of several kinds the strictest. */
const mostHours = ({ event }: EventPlan): number =>
  Math.min(
    ...event.lines.filter(({ material }) => material === 'fresh' || material === 'mixed').map(({ piece }) => freshHoursAhead[piece].most),
  );

export const tooFarAhead = (plan: EventPlan): boolean => plan.minutesLeft > 0 && (plan.hoursAhead ?? 0) > mostHours(plan);

export const aheadBlocks = (plan: EventPlan, manner: Manner): readonly Block[] => {
  if (!tooFarAhead(plan)) return [];
  const nearer = shortDate(addDays(plan.event.date, -1), manner);
  return [
    {
      block: 'problem',
      line: text`${strong(`Fresh work made ${plan.hoursAhead ?? 0} h ahead`)}: ${mostHours(plan)} h is the most, and no bench day is nearer. Open one (“one of us ${nearer} 3 hours”), or use what lasts, keep it chilled and make a test piece first.`,
    },
  ];
};
