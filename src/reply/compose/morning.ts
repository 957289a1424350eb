// The morning message to the bench: what is due today over all events, overdue first, each event's pieces with their tick buttons. Nothing due, nothing said.

import { type Due, dueOn } from '../../planning/due-on.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block, Reply } from '../reply.ts';
import { dateSpan, joined, text } from '../span.ts';
import { fullDate, shortDate } from '../words/dates.ts';
import { dueLine, workLine } from './due.ts';
import { piecesDue, tickBlocks, tickHint } from './tick-actions.ts';

export type Bench = Pick<Answer, 'bench' | 'titleOf' | 'manner' | 'openEvents'>;

export interface Punctuality {
  readonly late: boolean;
  readonly missed: readonly Day[]; // earlier mornings nothing was said on
}

const mostSteps = 8; // of each list, so that the message stays on one screen

export const morningReply = (bench: Bench, day: Day, punctuality: Punctuality): Reply | undefined => {
  const due = dueOn(bench.bench(), day);
  if (due.length === 0) return undefined;
  const pieces = piecesDue(due);
  const first = due.findIndex((one) => one.due === 'pieces');
  const steps = (of: readonly Due[]): readonly Block[] =>
    stepList(
      of.filter((one) => one.due === 'step'),
      bench,
    );
  return {
    blocks: [
      { block: 'answer', line: text`${dateSpan(fullDate(day, bench.manner))}: ${workLine(due)}.` },
      ...steps(first === -1 ? due : due.slice(0, first)),
      ...tickBlocks(pieces, day, bench),
      ...steps(first === -1 ? [] : due.slice(first)),
      ...(pieces.some((one) => one.pieces > 0) ? [tickHint] : []),
      ...notes(bench, punctuality),
    ],
  };
};

const stepList = (steps: readonly Due[], { manner, titleOf }: Bench): readonly Block[] => {
  if (steps.length === 0) return [];
  const items = steps.slice(0, mostSteps).map((one) => dueLine(one, manner, titleOf(one.key)));
  const more = steps.length - mostSteps;
  return [{ block: 'list', items: more > 0 ? [...items, text`and ${more} more: ask “what's due today?”`] : items }];
};

const notes = ({ manner }: Bench, { late, missed }: Punctuality): readonly Block[] => {
  if (missed.length > 0) {
    const days = missed.slice(-5).map((one) => [dateSpan(shortDate(one, manner))]);
    const more = missed.length > days.length ? text` and ${missed.length - days.length} days before` : [];
    return [
      {
        block: 'assumed',
        line: text`I was not running on ${joined(days, ', ')}${more}; what was due then and is not done is in this list.`,
      },
    ];
  }
  return late ? [{ block: 'assumed', line: text`Later than usual: I was not running at the hour.` }] : [];
};
