// Dates of the calendar that a recipe moved, old → new: a slower plant has to be ordered and hung earlier, and nobody would look for that under a recipe.

import type { EventPlan } from '../../planning/bench-plan.ts';
import type { StepName } from '../../planning/calendar-step.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, joined, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { stepTitle } from '../words/steps.ts';
import { stepId } from './calendar-given.ts';
import { lateBlocks } from './late.ts';

const moving: ReadonlySet<StepName> = new Set<StepName>(['order by', 'hang or treat', 'check the drying', 'condition', 'material ready']);

interface Dated {
  readonly title: string;
  readonly date: Day;
  readonly late: boolean;
}

const dates = ({ calendar }: EventPlan): ReadonlyMap<string, Dated> =>
  new Map(
    calendar.flatMap((step, index) =>
      step.done || !moving.has(step.step)
        ? []
        : [[stepId(step, calendar.slice(0, index)), { title: stepTitle(step, calendar), date: step.date, late: step.late }] as const],
    ),
  );

/** Nothing where the dates stand, or where there were none before. */
export const movedDates = ({ planBefore, plan, manner, stated }: Answer): readonly Block[] => {
  if (!stated.some(({ fact }) => fact === 'recipe')) return [];
  const [before, now] = [planBefore?.(), plan()];
  if (!before || !now) return [];
  const was = dates(before);
  const lines = [...dates(now)].reverse().flatMap(([id, { title, date }]): Line[] => {
    const old = was.get(id);
    return old === undefined || old.date === date
      ? []
      : [text`${title.toLowerCase()} ${dateSpan(shortDate(old.date, manner))} → ${strong(shortDate(date, manner))}`];
  });
  if (lines.length === 0) return [];
  const late = [...dates(now)].some(([id, step]) => step.late && was.get(id)?.late !== true);
  return [{ block: 'line', line: text`This recipe moves dates: ${joined(lines, ', ')}.` }, ...(late ? lateBlocks(now, manner) : [])];
};
