// What is due on one day over all events: overdue first, then what goes out of the door, what is made, and what has to be ordered or looked at.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import type { BenchPlan, Stage } from './bench-plan.ts';
import type { CalendarStep, StepName } from './calendar-step.ts';

export type Due =
  | {
      readonly due: 'pieces';
      readonly key: string;
      readonly overdue: false; // unmade pieces are planned again from today, so they are never overdue
      readonly date: Day;
      readonly piece: PieceKind;
      readonly material: Material;
      readonly stage: Stage;
      readonly pieces: number; // to finish that day
      readonly minutes: number;
    }
  | {
      readonly due: 'step';
      readonly key: string;
      readonly overdue: boolean;
      readonly date: Day;
      readonly step: StepName;
      readonly of: CalendarStep;
    };

// What cannot wait comes first. Readiness of material is told by the checks before it.
const order: readonly (StepName | 'pieces')[] = [
  'event',
  'hand over',
  'boarded',
  'pieces',
  'condition',
  'check the drying',
  'hang or treat',
  'order by',
  'decide the material',
  'decide recipe and ribbon',
];

/** Due on this day, with what is overdue before it. The plan must have been made for that day or an earlier one. */
export const dueOn = (plan: BenchPlan, day: Day): readonly Due[] => {
  const steps = plan.events.flatMap(({ key, calendar }) =>
    calendar
      .filter((step) => order.includes(step.step) && !step.done && (step.date === day || (step.date < day && step.late && !step.waitsFor)))
      .map((step): Due => ({ due: 'step', key, overdue: step.date < day, date: step.date, step: step.step, of: step })),
  );
  const tasks = plan.days.filter((one) => one.date === day).flatMap((one) => one.tasks);
  const pieces = tasks.map(({ key, piece, material, stage, pieces, minutes }): Due => {
    return { due: 'pieces', key, overdue: false, date: day, piece, material, stage, pieces, minutes };
  });
  return [...steps, ...pieces]
    .map((due, index) => ({ due, index }))
    .sort((a, b) => Number(b.due.overdue) - Number(a.due.overdue) || rank(a.due) - rank(b.due) || a.index - b.index)
    .map(({ due }) => due);
};

const rank = (due: Due): number => order.indexOf(due.due === 'pieces' ? 'pieces' : due.step);
