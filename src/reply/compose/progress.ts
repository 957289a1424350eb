// After "made 12": how many are made and left, the time that takes, and whether the bench day still stands.

import { madeOf, ordered } from '../../thread/apply-progress.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { countSpan, dateSpan, joined, strong, text } from '../span.ts';
import { duration, shortDate } from '../words/dates.ts';
import { counted, plural } from '../words/names.ts';
import { countsWords } from '../words/steps.ts';

export const progressBlocks = (answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  if (kinds.length === 0) {
    return [{ block: 'answer', line: text`Noted. I don't know yet how many are ordered, so I can't say what is left. How many pieces?` }];
  }
  const lines = kinds.map((piece): Line => {
    const of = ordered(event, piece);
    const made = madeOf(event, piece);
    if (made > of)
      return text`${strong(`${made} made`)} of ${countSpan(counted(of, piece, manner.says))}: ${made - of} more than ordered. Spares? If not, correct me.`;
    const left = of - made;
    return left === 0
      ? text`${strong(`All ${of}`)} ${plural(piece, manner.says)} made`
      : text`${strong(`${made} of ${of}`)} ${plural(piece, manner.says)} made, ${strong(`${left} left`)}`;
  });
  return [{ block: 'answer', line: text`${joined(lines, '; ')}.` }, ...nextBench(answer)];
};

/** The next bench days of this event, so that nobody has to look the calendar up. */
const nextBench = (answer: Answer): readonly Block[] => {
  const plan = answer.plan();
  if (!plan || plan.minutesLeft === 0) return [];
  const days = plan.days
    .slice(0, 3)
    .map((day) => text`${dateSpan(shortDate(day.date, answer.manner))} ${countsWords(day.pieces, answer.manner.says)}`);
  const bench = days.length > 0 ? text` Next at the bench: ${joined(days, '; ')}.` : [];
  return [{ block: 'line', line: text`${duration(plan.minutesLeft)} of work left.${bench}` }];
};
