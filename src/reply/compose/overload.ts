// The bench is too full: the tightest stretch of days, what it lacks, and cures that were tried and are each enough.

import type { BenchPlan } from '../../planning/bench-plan.ts';
import { overloadOf } from '../../planning/overload-of.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, strong, text } from '../span.ts';
import { cureWords, isOffered } from '../words/cures.ts';
import { duration, shortDate } from '../words/dates.ts';

const mostCures = 4; // so that the answer stays on one screen

/** Of the event of this key, or of the whole bench. */
export const overloadBlocks = (whole: BenchPlan, answer: Pick<Answer, 'manner' | 'titleOf'>, key?: string): readonly Block[] => {
  const bench = key === undefined ? whole : overloadOf(whole, key);
  if (bench.nobodyAtTheBench)
    return [{ block: 'problem', line: text`Nobody is at the bench on any of those days. Tell me who is: “2 of us thu, 4 hrs each”.` }];
  if (!bench.tight) return [];
  const cures = bench.cures.filter((cure) => isOffered(cure, bench)).slice(0, mostCures);
  return [
    { block: 'problem', line: tightLine(bench.tight, answer.manner) },
    ...(cures.length > 0
      ? [
          {
            block: 'list' as const,
            title: cures.length === 1 ? text`This would be enough:` : text`Any one of these would be enough:`,
            items: cures.map((cure) => cureWords(cure, bench, { ...answer, ...(key === undefined ? {} : { about: key }) })),
          },
        ]
      : [{ block: 'line' as const, line: text`No single change I know is enough. Another date, or another pair of hands?` }]),
  ];
};

const tightLine = (tight: NonNullable<BenchPlan['tight']>, manner: Manner): Line => {
  const from = dateSpan(shortDate(tight.from, manner));
  const to = dateSpan(shortDate(tight.to, manner));
  const when = tight.from === tight.to ? text`On ${from}` : text`From ${from} to ${to}`;
  if (tight.minutesThere === 0)
    return text`${when} nobody is at the bench, and ${strong(duration(tight.minutesNeeded))} of work has no other day.`;
  return text`${when} the bench has ${duration(tight.minutesThere)} for ${duration(tight.minutesNeeded)} of work: ${strong(duration(tight.minutesShort))} short.`;
};
