// What is due on a day, as a list: overdue first, then hand-overs, boards, pieces, orders. The morning message and "what's due today?" share it.

import type { Due } from '../../planning/due-on.ts';
import type { Day } from '../../values/day.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, ownWords, problemSpan, strong, text } from '../span.ts';
import { duration, fullDate, shortDate } from '../words/dates.ts';
import { counted } from '../words/names.ts';
import { stepName } from '../words/steps.ts';

export interface DueDay {
  readonly day: Day;
  readonly due: readonly Due[];
}

export const dueBlocks = (days: readonly DueDay[], answer: Pick<Answer, 'manner' | 'titleOf'>): readonly Block[] => {
  const { manner } = answer;
  const [first] = days;
  if (!first) return [];
  const all = days.flatMap((one) => one.due);
  const when = days.length === 1 ? fullDate(first.day, manner) : `the ${days.length} days from ${fullDate(first.day, manner)}`;
  if (all.length === 0) return [{ block: 'answer', line: text`Nothing is due on ${dateSpan(when)}.` }];
  const pieces = all.reduce((count, due) => count + (due.due === 'pieces' ? due.pieces : 0), 0);
  const minutes = all.reduce((total, due) => total + (due.due === 'pieces' ? due.minutes : 0), 0);
  const bench = pieces > 0 ? text`${strong(`${pieces} pieces`)} to make, ${duration(minutes)}` : text`no pieces to make`;
  return [
    { block: 'answer', line: text`${dateSpan(when)}: ${bench}.` },
    ...days.filter((one) => one.due.length > 0).map((one): Block => dayList(one, days.length > 1, answer)),
  ];
};

const dayList = ({ day, due }: DueDay, titled: boolean, answer: Pick<Answer, 'manner' | 'titleOf'>): Block => ({
  block: 'list',
  ...(titled ? { title: text`${strong(shortDate(day, answer.manner))}` } : {}),
  items: due.map((one) => dueLine(one, answer.manner, answer.titleOf(one.key))),
});

export const dueLine = (due: Due, manner: Manner, title: string): Line => {
  const name = ownWords(title);
  if (due.due === 'pieces') {
    const stage = due.stage === 'base' ? ' (dried base)' : due.stage === 'finish' ? ' (fresh part)' : '';
    const made =
      due.pieces > 0
        ? `make ${counted(due.pieces, due.piece, manner.says)}${stage}`
        : `begin the next ${counted(1, due.piece, manner.says)}${stage}`;
    return text`${strong(made)}, ${duration(due.minutes)}: ${name}`;
  }
  const late = due.overdue ? text`${problemSpan('overdue')} since ${dateSpan(shortDate(due.date, manner))}, ` : [];
  return text`${late}${strong(stepName(due.step).toLowerCase())}${due.of.plant ? ` (${due.of.plant})` : ''}: ${name}`;
};
