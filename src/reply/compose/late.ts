// What of an event is already late, in one line, and what is still possible instead: the ways that are in time before those that are not.

import type { EventPlan } from '../../planning/bench-plan.ts';
import type { CalendarStep, Remedy } from '../../planning/calendar-step.ts';
import type { Manner } from '../answer.ts';
import type { Block } from '../reply.ts';
import { dateSpan, joined, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { remedyWords } from '../words/remedies.ts';
import { lateName } from '../words/steps.ts';

/** Steps that are late only because an earlier one is are left out: the earlier one carries what can be done. */
export const lateBlocks = (plan: EventPlan, manner: Manner): readonly Block[] => {
  const late = plan.calendar.filter((step) => step.late && !step.waitsFor).reverse();
  const undecided = late.find((step) => step.step === 'decide the material');
  return [
    ...lateSteps(
      late.filter((step) => step !== undecided),
      manner,
    ),
    ...(undecided ? [undecidedBlock(undecided, manner)] : []),
  ];
};

const lateSteps = (late: readonly CalendarStep[], manner: Manner): readonly Block[] => {
  if (late.length === 0) return [];
  const names = joined(
    late.map((step) => text`${lateName(step.step)} (${dateSpan(shortDate(step.date, manner))})`),
    ', ',
  );
  const still = stillPossible(late).map((remedy) => remedyWords(remedy, manner));
  return [
    { block: 'problem', line: text`Already late: ${names}.${still.length === 0 ? ' Do it today.' : ''}` },
    ...(still.length > 0 ? [{ block: 'list' as const, title: text`Still possible:`, items: still }] : []),
  ];
};

/** No way left has the material here for the bench; what could be made fresh instead is another matter. */
export const cannotBeReady = (plan: EventPlan): boolean => {
  const ways = plan.calendar.filter((step) => step.late && !step.waitsFor).flatMap((step) => step.canStill);
  const timed = ways.filter((way) => 'inTime' in way);
  return timed.length > 0 && timed.every(({ inTime }) => inTime === 'no') && !ways.some((way) => way.do === 'fetch it from the market');
};

const stillPossible = (late: readonly CalendarStep[]): readonly Remedy[] => {
  const all = late.flatMap((step) => step.canStill).filter((remedy) => remedy.do !== 'do it today');
  const inTime = all.filter((remedy) => !('inTime' in remedy) || remedy.inTime !== 'no');
  return inTime.length > 0 ? inTime : all;
};

const undecidedBlock = (step: CalendarStep, manner: Manner): Block => ({
  block: 'problem',
  line: text`Nobody has said dried or fresh. Stems of your own to dry had to be ordered by ${dateSpan(shortDate(step.date, manner))}; fresh, or bought ready dried, is still open.`,
});
