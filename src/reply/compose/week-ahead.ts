// The weekly look-ahead: what each of the next seven days holds, whether it all fits, and what does not.

import type { BenchPlan } from '../../planning/bench-plan.ts';
import { dayNumber } from '../../planning/day-number.ts';
import { workingDays } from '../../planning/working-days.ts';
import { addDays, type Day } from '../../values/day.ts';
import type { Block, Line, Reply } from '../reply.ts';
import { dateSpan, text } from '../span.ts';
import { duration, shortDate } from '../words/dates.ts';
import { dueBlocks, dueDays, workLine } from './due.ts';
import type { Bench } from './morning.ts';
import { overloadBlocks } from './overload.ts';

const daysAhead = 7;

/** From this day on; the plan must have been made for it. Undefined when nothing is due in those days. */
export const weekAheadReply = (bench: Bench, from: Day): Reply | undefined => {
  const days = dueDays(
    Array.from({ length: daysAhead }, (_, index) => addDays(from, index)),
    bench,
  );
  const all = days.flatMap(({ due }) => due);
  if (all.length === 0) return undefined;
  const plan = bench.bench();
  const week = text`The week ahead, ${dateSpan(shortDate(from, bench.manner))} to ${dateSpan(shortDate(addDays(from, daysAhead - 1), bench.manner))}`;
  const [, ...lists] = dueBlocks(days, bench);
  const first: Block = { block: 'answer', line: text`${week}: ${workLine(all)}${room(plan, from)}.` };
  return { blocks: [first, ...(plan.fits ? [] : overloadBlocks(plan, bench)), ...lists] };
};

/** " of the bench's 17 h": what there is to fill. */
const room = ({ rules }: BenchPlan, from: Day): Line => {
  const days = workingDays(rules);
  let minutes = 0;
  for (let ahead = 0; ahead < daysAhead; ahead += 1) minutes += days.on(dayNumber(addDays(from, ahead))).minutes;
  return minutes > 0 ? text` of the bench's ${duration(minutes)}` : text`, and nobody is at the bench`;
};
