// An event's plan as the calendar file and the calendar picture take it.

import type { CalendarFileInput, CalendarFileStep } from '../attachments/calendar-file.ts';
import type { PictureInput } from '../attachments/picture-days.ts';
import type { PieceCount } from '../attachments/piece-count.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { BenchPlan, EventPlan } from '../planning/bench-plan.ts';
import type { CalendarStep } from '../planning/calendar-step.ts';
import { dayNumber } from '../planning/day-number.ts';
import { workingDays } from '../planning/working-days.ts';
import type { Manner } from '../reply/answer.ts';
import { lineToText } from '../reply/reply-to-text.ts';
import { pieceName, plural } from '../reply/words/names.ts';
import { stepDetail, stepName } from '../reply/words/steps.ts';
import { addDays, type Day } from '../values/day.ts';

export interface CalendarOf {
  readonly studio: string;
  readonly title: string;
  readonly plan: EventPlan;
  readonly bench: BenchPlan;
  readonly manner: Manner;
}

const countsOf = (step: CalendarStep, { says }: Manner): readonly PieceCount[] =>
  (Object.entries({ ...step.bases, ...step.pieces }) as [PieceKind, number][])
    .filter(([, count]) => count > 0)
    .map(([piece, count]) => ({ name: count === 1 ? pieceName(piece, says) : plural(piece, says), count }));

/** `sequence` rises with every change of the thread, so that a calendar takes the newer file. */
export const calendarFileInput = (
  { studio, title, plan, manner }: CalendarOf,
  uidBase: string,
  stamp: number,
  sequence: number,
): CalendarFileInput => ({
  studio,
  event: title,
  uidBase,
  stamp,
  sequence,
  steps: plan.calendar
    .filter((step) => !step.done)
    .map((step, index): CalendarFileStep => {
      const pieces = countsOf(step, manner);
      const detail = step.step === 'bench' ? '' : lineToText(stepDetail(step, manner.says));
      return {
        id: stepId(step, plan.calendar.slice(0, index)),
        title: stepName(step.step),
        date: step.date,
        ...(detail ? { note: detail } : {}),
        ...(pieces.length > 0 ? { pieces } : {}),
        ...(step.minutes === undefined ? {} : { minutes: step.minutes }),
      };
    }),
});

/** Bench days are told apart by their date; the other steps by name and by how many of that name came before. */
const stepId = (step: CalendarStep, earlier: readonly CalendarStep[]): string => {
  const name = step.step.replace(/[^a-z]+/gi, '-');
  if (step.step === 'bench') return `${name}-${step.date}`;
  const same = earlier.filter((one) => one.step === step.step).length;
  return same === 0 ? name : `${name}-${same + 1}`;
};

export const pictureInput = ({ studio, title, plan, bench, manner }: CalendarOf): PictureInput => ({
  studio,
  event: title,
  eventDay: plan.event.date,
  steps: plan.calendar
    .filter((step) => !step.done && step.step !== 'bench' && step.step !== 'event')
    .map((step) => ({ title: stepName(step.step), date: step.date, ...(step.late ? { late: true } : {}) })),
  bench: plan.calendar
    .filter((step) => step.step === 'bench')
    .map((step) => ({ date: step.date, pieces: countsOf(step, manner), minutes: step.minutes ?? 0 })),
  closed: closedDays(plan, bench),
  dayFirst: manner.dayFirst,
});

/** Days without a bench minute between the first step and the event. */
const closedDays = (plan: EventPlan, bench: BenchPlan): PictureInput['closed'] => {
  const days = workingDays(bench.rules);
  const [first = plan.event.date] = plan.calendar.map((step): Day => step.date).sort();
  const closed: { date: Day; why: string }[] = [];
  for (let day = first; day <= plan.event.date; day = addDays(day, 1)) {
    if (days.on(dayNumber(day)).minutes === 0) closed.push({ date: day, why: 'closed' });
  }
  return closed;
};
