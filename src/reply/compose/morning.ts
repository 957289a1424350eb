// The morning message to the bench: what is due today over all events. Nothing due, nothing said.

import { dueOn } from '../../planning/due-on.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block, Reply } from '../reply.ts';
import { dateSpan, joined, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { dueBlocks } from './due.ts';

export type Bench = Pick<Answer, 'bench' | 'titleOf' | 'manner'>;

export const morningReply = (bench: Bench, day: Day, { late, missed }: { late: boolean; missed: readonly Day[] }): Reply | undefined => {
  const due = dueOn(bench.bench(), day);
  if (due.length === 0) return undefined;
  const days = missed.map((one) => [dateSpan(shortDate(one, bench.manner))]);
  const notes: Block[] = [];
  if (missed.length > 0)
    notes.push({
      block: 'assumed',
      line: text`I was not running on ${joined(days, ', ')}; what was due then and is not done is in this list.`,
    });
  else if (late) notes.push({ block: 'assumed', line: text`Later than usual: I was not running at the hour.` });
  return { blocks: [...dueBlocks([{ day, due }], bench), ...notes] };
};
