// The bench is too full: the tightest stretch of days, what it lacks, and cures that were tried and are enough.

import type { BenchPlan } from '../../planning/bench-plan.ts';
import type { Manner } from '../answer.ts';
import type { Block } from '../reply.ts';
import { dateSpan, strong, text } from '../span.ts';
import { duration, shortDate } from '../words/dates.ts';

export const overloadBlocks = (bench: BenchPlan, manner: Manner): readonly Block[] => {
  if (bench.nobodyAtTheBench)
    return [{ block: 'problem', line: text`Nobody is at the bench on any of those days. Tell me who is: “2 of us thu, 4 hrs each”.` }];
  const { tight } = bench;
  if (!tight) return [];
  const from = dateSpan(shortDate(tight.from, manner));
  const to = dateSpan(shortDate(tight.to, manner));
  const when = tight.from === tight.to ? text`On ${from}` : text`From ${from} to ${to}`;
  return [
    {
      block: 'problem',
      line: text`${when} the bench has ${duration(tight.minutesThere)} for ${duration(tight.minutesNeeded)} of work: ${strong(duration(tight.minutesShort))} short.`,
    },
  ];
};
