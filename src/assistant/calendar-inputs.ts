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
import { heldSteps, stepId, withdrawnSteps } from '../reply/compose/calendar-given.ts';
import { lineToText } from '../reply/reply-to-text.ts';
import { pieceName, plural } from '../reply/words/names.ts';
import { stepDetail, stepTitle } from '../reply/words/steps.ts';
import type { HeldStep } from '../thread/event.ts';
import { addDays, type Day } from '../values/day.ts';

export interface CalendarOf {
  readonly studio: string;
  readonly title: string;
  readonly plan: EventPlan;
  readonly bench: BenchPlan;
  readonly manner: Manner;
}

const countsOf = ({ bases = {}, pieces = {} }: CalendarStep, { says }: Manner): readonly PieceCount[] => {
  const counts = (of: { readonly [piece in PieceKind]?: number }, after: string): readonly PieceCount[] =>
    (Object.entries(of) as [PieceKind, number][])
      .filter(([, count]) => count > 0)
      .map(([piece, count]) => ({ name: `${count === 1 ? pieceName(piece, says) : plural(piece, says)}${after}`, count }));
  return [...counts(bases, ' (dried base)'), ...counts(pieces, '')];
};

export interface FileOf {
  readonly studio: string;
  readonly title: string;
  readonly uidBase: string;
  readonly stamp: number; // epoch milliseconds
  readonly sequence: number; // the thread's version: every file given out is an entry of its own, so it rises with each
  readonly today: Day;
  readonly manner: Manner;
  readonly held: readonly HeldStep[]; // of every file given out before
}

/** What no longer holds goes along as withdrawn. Without a plan (the event is off) that is all there is. */
export const calendarFileInput = (of: FileOf, plan: EventPlan | undefined): CalendarFileInput => {
  const { studio, title, uidBase, stamp, sequence, today, manner, held } = of;
  const input = { studio, event: title, uidBase, stamp, sequence };
  if (!plan) return { ...input, cancelled: true, steps: held.map(({ id, title, date }) => ({ id, title, date })) };
  const gone = withdrawnSteps(held, heldSteps(plan), today);
  return { ...input, steps: [...fileSteps(plan, manner), ...gone.map((step) => ({ ...step, withdrawn: true as const }))] };
};

const fileSteps = (plan: EventPlan, manner: Manner): readonly CalendarFileStep[] =>
  plan.calendar.flatMap((step, index): CalendarFileStep[] => {
    if (step.done) return [];
    const pieces = countsOf(step, manner);
    const detail = step.step === 'bench' ? '' : lineToText(stepDetail(step, manner));
    return [
      {
        id: stepId(step, plan.calendar.slice(0, index)),
        title: stepTitle(step, plan.calendar),
        date: step.date,
        ...(detail ? { note: detail } : {}),
        ...(pieces.length > 0 ? { pieces } : {}),
        ...(step.minutes === undefined ? {} : { minutes: step.minutes }),
      },
    ];
  });

export const pictureInput = ({ studio, title, plan, bench, manner }: CalendarOf): PictureInput => ({
  studio,
  event: title,
  eventDay: plan.event.date,
  steps: plan.calendar
    .filter((step) => !step.done && step.step !== 'bench' && step.step !== 'event')
    .map((step) => ({ title: stepTitle(step, plan.calendar), date: step.date, ...(step.late ? { late: true } : {}) })),
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
