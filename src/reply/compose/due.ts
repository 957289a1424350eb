// What is due on a day, as a list: overdue first, then hand-overs, boards, pieces, orders. The morning message and "what's due today?" share it.

import { type Due, dueOn } from '../../planning/due-on.ts';
import { soMany } from '../../reading/words/kind-words.ts';
import { addDays, type Day, daysBetween } from '../../values/day.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, joined, ownWords, problemSpan, strong, text } from '../span.ts';
import { duration, fullDate, shortDate } from '../words/dates.ts';
import { counted } from '../words/names.ts';
import { dueName, lateName } from '../words/steps.ts';

export interface DueDay {
  readonly day: Day;
  readonly due: readonly Due[];
}

type Told = Pick<Answer, 'manner' | 'titleOf' | 'bench'>;

/** What is due on each of these days; what is overdue stands once, under the first. */
export const dueDays = (days: readonly Day[], { bench }: Pick<Answer, 'bench'>): readonly DueDay[] =>
  days.map((day, index) => ({ day, due: dueOn(bench(), day).filter((one) => index === 0 || !one.overdue) }));

export const dueBlocks = (days: readonly DueDay[], told: Told): readonly Block[] => {
  const { manner } = told;
  const [first] = days;
  const last = days.at(-1);
  if (!first || !last) return [];
  const when = days.length === 1 ? fullDate(first.day, manner) : `${shortDate(first.day, manner)} to ${fullDate(last.day, manner)}`;
  const isRange = days.length > 1;
  const all = days.flatMap((one) => one.due);
  if (all.length === 0) {
    const line = text`Nothing is due ${isRange ? 'from' : 'on'} ${dateSpan(when)}.`;
    return [{ block: 'answer', line }, ...nextDue(last.day, told)];
  }
  const overdue = isRange ? all.filter((one) => one.overdue).length : 0;
  const lists = days.map(({ day, due }) => ({ day, due: isRange ? due.filter((one) => !one.overdue) : due }));
  return [
    { block: 'answer', line: text`${dateSpan(when)}: ${workLine(all)}.` },
    ...(overdue > 0 ? [overdueBlock(overdue)] : []),
    ...lists.filter((one) => one.due.length > 0).map((one): Block => dayList(one, isRange, told)),
  ];
};

/** Over several days what is overdue is counted; today's own list names it. */
const overdueBlock = (count: number): Block => ({
  block: 'problem',
  line: text`${strong(count === 1 ? '1 thing is overdue' : `${count} things are overdue`)}: ask “what's due today?”`,
});

/** "17 pieces to make, 4 h 15 min". */
export const workLine = (all: readonly Due[]): Line => {
  const pieces = all.reduce((count, due) => count + (due.due === 'pieces' && due.stage !== 'base' ? due.pieces : 0), 0);
  const bases = all.reduce((count, due) => count + (due.due === 'pieces' && due.stage === 'base' ? due.pieces : 0), 0);
  const minutes = all.reduce((total, due) => total + (due.due === 'pieces' ? due.minutes : 0), 0);
  if (minutes === 0) return text`no pieces to make`;
  const parts = [
    ...(pieces > 0 ? [strong(soMany(pieces))] : []),
    ...(bases > 0 ? [strong(bases === 1 ? '1 dried base' : `${bases} dried bases`)] : []),
  ].map((span) => [span]);
  return parts.length > 0 ? text`${joined(parts, ' and ')} to make, ${duration(minutes)}` : text`${duration(minutes)} at the bench`;
};

/** The next day with something due, looked for as far ahead as the plan goes. */
const nextDue = (after: Day, told: Told): readonly Block[] => {
  const bench = told.bench();
  const end = [after, ...bench.events.map(({ event }) => event.date)].sort().at(-1) ?? after;
  for (let ahead = 1; ahead <= daysBetween(after, end); ahead += 1) {
    const day = addDays(after, ahead);
    const [due] = dueOn(bench, day);
    if (due)
      return [
        { block: 'line', line: text`Next: ${dateSpan(shortDate(day, told.manner))}, ${dueLine(due, told.manner, told.titleOf(due.key))}.` },
      ];
  }
  return [];
};

// A phone's screen: fewer of each day when there are several.
const mostItems = 12;
const mostOfMany = 5;

const dayList = ({ day, due }: DueDay, titled: boolean, { manner, titleOf }: Told): Block => {
  const most = titled ? mostOfMany : mostItems;
  const items = due.slice(0, most).map((one) => dueLine(one, manner, titleOf(one.key)));
  const more = due.length - most;
  return {
    block: 'list',
    ...(titled ? { title: text`${strong(shortDate(day, manner))}` } : {}),
    items: more > 0 ? [...items, text`and ${more} more`] : items,
  };
};

export const dueLine = (due: Due, manner: Manner, title: string): Line => {
  const name = ownWords(title);
  if (due.due === 'pieces') {
    const stage = due.stage === 'base' ? ' (dried base)' : due.stage === 'finish' ? ' (fresh part)' : '';
    const made =
      due.pieces > 0
        ? `make ${counted(due.pieces, due.piece, manner.says)}${stage}`
        : `begin the next ${counted(1, due.piece, manner.says).slice(2)}${stage}`;
    return text`${strong(made)}, ${duration(due.minutes)}: ${name}`;
  }
  const plant = due.of.plant ? ` (${due.of.plant})` : '';
  if (!due.overdue) return text`${strong(dueName(due.step))}${plant}: ${name}`;
  return text`${problemSpan('overdue')} since ${dateSpan(shortDate(due.date, manner))}, ${strong(lateName(due.step))}${plant}: ${name}`;
};
